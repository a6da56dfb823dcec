using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What is said of a use beside its doses.</summary>
internal static class UseNotes
{
    /// <param name="beside">All uses of the same session, this one among them.</param>
    public static IEnumerable<string> Of(Use use, IReadOnlyList<Use> beside, Texts texts)
    {
        var words = texts.Words;
        if (use.Written.Rounds is { } rounds)
        {
            var others = beside
                .Where(o => o.Written.Rounds == rounds && o.Written != use.Written)
                .Select(o => texts.Of(o.Exercise.Id).Title)
                .Distinct(StringComparer.Ordinal)
                .ToArray();
            if (others.Length > 0)
                yield return words.Say("in-rounds-with", ("exercises", words.And(others)));
            yield return words.Say(
                rounds.Rest is null ? "rounds" : "rounds-and-rest",
                ("n", rounds.Times),
                ("rest", words.Span(rounds.Rest ?? Seconds.Zero))
            );
        }

        foreach (var other in beside.Where(o => o.Written == use.Written && o.Version != use.Version))
        {
            var weeks = words.Weeks(other.Weeks.Select(w => w.Week).ToSeries());
            yield return words.Say("other-version", ("weeks", weeks), ("exercise", texts.Of(other.Exercise.Id).Title));
        }
    }
}
