using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → the words of the short text about what was done, which a script makes.</summary>
internal static class LogViews
{
    /// <summary>As attributes; in braces what the script fills in.</summary>
    public static IEnumerable<AttributeView> Told(Plan plan)
    {
        var words = plan.Words;
        yield return Of("language", words.Language);
        yield return Of("day", words.Say("log-day", ("weekday", "{weekday}"), ("day", "{day}"), ("month", "{month}")));
        yield return Of(
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
            yield return Of($"steps-{form}", said);
        yield return Of("told-done", words.Say("log-told-done"));
        yield return Of("told-stopped", words.Say("log-told-stopped"));
        yield return Of("told-alarm", words.Say("log-told-alarm"));
        yield return Of("told-session", words.Say("log-told-session", ("number", "{number}")));
        yield return Of(
            "titles",
            string.Join('\n', plan.Sessions.Select(s => FormattableString.Invariant($"{s.Number}={s.Name}")))
        );
    }

    private static AttributeView Of(string name, string value) => new("data-" + name, value);
}
