using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>When the ranges are measured again → what the client is told of it.</summary>
internal static class RetestWords
{
    /// <returns>Null where nobody has said when.</returns>
    public static PlannedRetest? Of(Programme programme, ClientRanges ranges, Texts texts) =>
        programme.Retest is { } retest
            ? new(
                Sentence(retest, ranges.Gained, texts),
                retest.From > programme.End ? null : programme.WeekOf(retest.From),
                retest.From == retest.Until ? retest.From : null
            )
            : null;

    private static string Sentence(Retest retest, Series<Motion> gained, Texts texts)
    {
        var words = texts.Words;
        var again =
            retest.From == retest.Until
                ? words.Say("retest-on", ("coach", texts.Card.Coach), ("date", words.Date(retest.From)))
                : words.Say("retest-in-week", ("coach", texts.Card.Coach));
        return gained.Count == 0
            ? again
            : words.Say("retest-of", ("again", again), ("motions", words.Joined([.. gained.Select(Name)], "semicolon")));

        string Name(Motion motion) => words.SayOr("motion-" + Kebab.OfWords(motion.Name), motion.Name);
    }
}
