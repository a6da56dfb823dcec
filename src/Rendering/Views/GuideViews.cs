using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → what the guided session of one session sees beside its page.</summary>
internal static class GuideViews
{
    public static GuideView Of(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        return new(
            Phrases(words).Select(p => new AttributeView("data-" + p.Name, p.Said)).ToSeries(),
            [
                .. plan.VersionsOf(session)
                    .Select(s => new VersionView(
                        FormattableString.Invariant($"{s.Number}"),
                        s.Path,
                        s.Name,
                        s.KindName(),
                        s.Lengths(),
                        s.LoadedPlaces()
                    )),
            ],
            [
                .. Region.All.Select(r => new RegionView(
                    Kebab.OfWords(r.Name),
                    words.Say("region-" + Kebab.OfWords(r.Name)),
                    r.IsSided
                )),
            ],
            words.Say("guide-ill", ("date", words.PlainDate(plan.Health.Answered))),
            words.Say("guide-ease-off", ("n", plan.Course.EaseOffAbove)),
            words.Say("guide-alarm-after", ("coach", plan.Publisher.Coach)),
            words.Say("guide-ask-first", ("coach", plan.Publisher.Coach))
        );
    }

    /// <summary>What a script counts has a name for each kind of number: seconds-one, seconds-few, seconds-other.</summary>
    private static IEnumerable<(string Name, string Said)> Phrases(Words words)
    {
        yield return ("language", words.Language);
        foreach (var key in new[] { "seconds", "minutes", "minutes-and-seconds" })
        foreach (var (form, said) in words.Forms(key))
            yield return ($"{key}-{form}", said);
        yield return ("step-begins", words.Say("guide-step-begins", ("what", "{what}"), ("time", "{time}")));
        yield return (
            "effort-begins",
            words.Say("guide-effort-begins", ("what", "{what}"), ("effort", "{effort}"), ("time", "{time}"))
        );
        yield return ("effort-next", words.Say("guide-effort-next", ("effort", "{effort}"), ("time", "{time}")));
        yield return ("waits", words.Say("guide-waits", ("what", "{what}")));
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
}
