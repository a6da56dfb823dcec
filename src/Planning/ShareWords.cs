using Gradus.Domain;

namespace Gradus.Planning;

public static class ShareWords
{
    /// <summary>Where the time of a session goes, for somebody who does not see the bar.</summary>
    public static string Of(PlannedSession session, PlannedWeeks weeks, Words words)
    {
        var shares = weeks.Shares;
        return words.Say(
            "bar-of",
            ("session", session.Name),
            ("weeks", weeks.Heading),
            ("work", words.ShortSpan(shares.Work)),
            ("rest", words.ShortSpan(shares.Rest)),
            ("moving", words.ShortSpan(shares.Moving))
        );
    }
}
