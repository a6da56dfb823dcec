using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What scripts say on a page by themselves, each under the name of the data attribute that gives it to them.</summary>
public static class SpokenByScripts
{
    /// <summary>The attributes with the keys of the catalogue, in the guided session.</summary>
    private static readonly Series<(string Name, string Key)> OfGuide =
    [
        ("half", "guide-half"),
        ("end", "guide-end"),
        ("pause", "guide-paused"),
        ("longer", "guide-ten-more"),
        ("slept", "guide-slept"),
        ("hurts", "guide-stopped"),
        ("keep-breathing", "keep-breathing"),
        ("breathe-in", "guide-breathe-in"),
        ("breathe-out", "guide-breathe-out"),
        ("left", "left"),
        ("right", "right"),
        ("side-left", "guide-side-left"),
        ("side-right", "guide-side-right"),
        ("lead-again", "guide-open-again"),
        ("waits", "guide-waits"),
        ("learn", "guide-learn"),
        ("do-get-ready", "guide-do-get-ready"),
        ("do-switch", "guide-do-switch"),
        ("do-transition", "guide-do-transition"),
        ("effort1", "guide-effort-1"),
        ("effort2", "guide-effort-2"),
        ("effort3", "guide-effort-3"),
        ("effort4", "guide-effort-4"),
        ("effort5", "guide-effort-5"),
        ("next-end", "guide-next-end"),
        ("no-sound", "guide-no-sound"),
        ("sound-starts", "guide-sound-starts"),
        ("sound-on", "guide-sound-on"),
        ("noted", "session-noted"),
        ("not-kept", "session-not-kept"),
        ("not-counted", "session-not-counted"),
        ("not-counted-lost", "session-not-counted-lost"),
        ("alarm-noted", "guide-alarm-noted"),
        ("softer-plain", "guide-softer-plain"),
        ("skipped", "guide-skipped"),
    ];

    private static readonly Series<(string Name, string Key)> OfLog =
    [
        ("saved", "log-saved"),
        ("opened", "log-opened"),
        ("unread", "log-unread"),
        ("no-log", "log-no-log"),
        ("wiped", "log-wiped"),
    ];

    /// <summary>The attributes whose words are the same for everybody.</summary>
    public static IEnumerable<string> Names => OfGuide.Concat(OfLog).Select(p => "data-" + p.Name);

    /// <summary>All of them.</summary>
    public static IReadOnlyDictionary<string, string> On(Plan plan) =>
        InGuide(plan.Words)
            .Concat(InLog(plan))
            .DistinctBy(p => p.Name)
            .Concat(OfLog.Select(p => ("data-" + p.Name, plan.Words.Say(p.Key))))
            .ToDictionary(p => p.Item1, p => p.Item2, StringComparer.Ordinal);

    /// <summary>What the guided session says, name and words; in braces what it fills in. What a script counts has a name for
    /// each kind of number: seconds-one, seconds-few, seconds-other.</summary>
    public static IEnumerable<(string Name, string Said)> InGuide(Words words) =>
        OfGuide.Select(p => (p.Name, Said: words.Say(p.Key))).Concat(Filled(words)).Select(p => ("data-" + p.Name, p.Said));

    private static IEnumerable<(string Name, string Said)> Filled(Words words)
    {
        yield return ("language", words.Language);
        foreach (var key in new[] { "seconds", "minutes", "minutes-and-seconds", "breaths", "repetitions" })
        foreach (var (form, said) in words.Forms(key))
            yield return ($"{key}-{form}", said);
        foreach (var kind in Enum.GetNames<StepKind>().Select(Kebab.Of).Where(k => !OfGuide.Any(p => p.Name == "do-" + k)))
            yield return ($"do-{kind}", words.Say($"guide-do-{kind}", ("time", "{time}")));
        yield return ("do-effort", words.Say("guide-do-effort", ("do", "{do}"), ("effort", "{effort}")));
        yield return ("next", words.Say("guide-next", ("what", "{what}")));
        yield return ("place", words.Say("guide-place", ("n", "{n}"), ("of", "{of}")));
        yield return ("ends-at", words.Say("guide-ends-at", ("time", "{time}")));
        yield return ("softer", words.Say("guide-softer-is", ("effort", "{effort}")));
        yield return ("at-step", words.Say("guide-at-step", ("n", "{n}"), ("what", "{what}")));
        yield return ("left-out", words.Say("guide-left-out", ("exercises", "{exercises}")));
        yield return ("still-hurts", words.Say("guide-still-hurts", ("exercise", "{exercise}")));
        yield return ("take", words.Say("guide-take", ("session", "{session}"), ("time", "{time}")));
        yield return ("missing", words.Say("guide-missing", ("question", "{question}")));
        foreach (var (form, said) in words.Forms("guide-did"))
            yield return ($"did-{form}", said);
    }

    /// <summary>What makes the short text about what was done, name and words; in braces what a script fills in.</summary>
    public static IEnumerable<(string Name, string Said)> InLog(Plan plan) => Told(plan).Select(p => ("data-" + p.Name, p.Said));

    private static IEnumerable<(string Name, string Said)> Told(Plan plan)
    {
        var words = plan.Words;
        yield return ("language", words.Language);
        yield return ("day", words.Say("log-day", ("weekday", "{weekday}"), ("day", "{day}"), ("month", "{month}")));
        yield return (
            "told",
            words.Say(
                "log-told",
                ("day", "{day}"),
                ("week", "{week}"),
                ("session", "{session}"),
                ("how", "{how}"),
                ("effort", "{effort}"),
                ("pain", "{pain}")
            )
        );
        foreach (var (form, said) in words.Forms("log-told-steps"))
            yield return ($"steps-{form}", said);
        yield return ("told-done", words.Say("log-told-done"));
        yield return ("told-stopped", words.Say("log-told-stopped"));
        yield return ("told-alarm", words.Say("log-told-alarm"));
        yield return ("told-skipped", words.Say("log-told-skipped"));
        yield return ("told-session", words.Say("log-told-session", ("number", "{number}")));
        yield return (
            "titles",
            string.Join('\n', plan.Sessions.Select(s => FormattableString.Invariant($"{s.Number}={s.Name}")))
        );
    }
}
