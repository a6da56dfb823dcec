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
            SpokenByScripts.InGuide(words).Select(p => new AttributeView(p.Name, p.Said)).ToSeries(),
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
            words.Say("guide-today-ill", ("date", words.PlainDate(plan.Health.Answered))),
            words.Say("guide-ease-off", ("n", plan.Course.EaseOffAbove)),
            words.Say("guide-alarm-after", ("coach", plan.Publisher.Coach)),
            words.Say("guide-ask-first", ("coach", plan.Publisher.Coach)),
            words.Say("guide-still-told", ("coach", plan.Publisher.Coach)),
            words.Say("guide-still-untold", ("coach", plan.Publisher.Coach)),
            [.. EffortWords.All(words).Select(e => new EffortView(PageViews.Number(e.Number), e.Said))],
            plan.Measures ? MeasureWords.Note(plan) : "",
            [.. MeasureWords.Tries(words)]
        );
    }
}
