using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What a client said of their health, agreed to, and was cleared for → the words of before-you-start.</summary>
internal static class HealthWords
{
    public static PlannedHealth Of(Training training, Texts texts)
    {
        var (client, words) = (texts.Client, texts.Words);
        var asked = training.Asked.Select(texts.Find).OfType<Condition>().ToArray();
        var showsAll = texts.Card.Settings.AnswersOnPages == AnswersOnPages.All;
        return new(
            Agreed(client, words).ToSeries(),
            client.Answered,
            asked
                .Select(c => (c.Question, client.AnswerTo(c.Id)?.Reply))
                .Where(a => showsAll || a.Reply is not Domain.Reply.No)
                .Select(a => new PlannedAnswer(a.Question, Reply(a.Reply, words)))
                .ToSeries(),
            showsAll ? null : words.Say("health-with-coach"),
            client
                .Clearances.Where(clearance => clearance.Until >= client.Programme.Start)
                .SelectMany(clearance =>
                    asked
                        .Where(c => c.Id == clearance.Condition)
                        .Select(c => new PlannedClearance(
                            c.Name,
                            clearance.By,
                            clearance.On,
                            clearance.Until,
                            clearance.Limits.Select(l => Limit(l, words)).ToSeries()
                        ))
                )
                .ToSeries()
        );
    }

    private static IEnumerable<string> Agreed(Client client, Words words)
    {
        yield return words.Say("agreed-training", ("date", words.Date(client.Agreed.Training)));
        if (client.Agreed.Guardian is { } guardian)
            yield return words.Say("agreed-guardian", ("date", words.Date(guardian)));
    }

    internal static string Reply(Reply? reply, Words words) =>
        reply switch
        {
            Domain.Reply.No => words.Say("reply-no"),
            Domain.Reply.Yes { Side: Side.Left } => words.Say("reply-yes-left"),
            Domain.Reply.Yes { Side: Side.Right } => words.Say("reply-yes-right"),
            Domain.Reply.Yes => words.Say("reply-yes"),
            Domain.Reply.Pains pains => words.Joined(
                [.. pains.Places.Select(p => words.Say("reply-pain", ("level", p.Level), ("place", Place(p, words))))],
                "semicolon"
            ),
            _ => words.Say("reply-not-asked"),
        };

    internal static string Limit(ClearanceLimit limit, Words words) =>
        limit switch
        {
            ClearanceLimit.EffortAtMost effort => words.Say("limit-effort", ("percent", effort.Percent)),
            ClearanceLimit.HoldAtMost hold => words.Say("limit-hold", ("time", words.Span(hold.Seconds))),
            ClearanceLimit.NoEndRangeTrunkBending => words.Say("limit-trunk-bending"),
            ClearanceLimit.NotLyingOnTheFront => words.Say("limit-front"),
            ClearanceLimit.NotLyingOnTheBack => words.Say("limit-back"),
            _ => throw new NotSupportedException(limit.GetType().Name),
        };

    /// <summary>"left knee", "neck"</summary>
    internal static string Place(Pain pain, Words words)
    {
        var region = words.Say("region-" + Kebab.OfWords(pain.Where.Name));
        return pain.Side is { } side ? words.Say("region-on-side", ("side", words.Say(side.Word())), ("region", region)) : region;
    }
}
