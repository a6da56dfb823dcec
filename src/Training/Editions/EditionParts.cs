using System.Globalization;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What stands on a client's pages beside sessions, exercises and cautions, each part under a name of its own.</summary>
public static class EditionParts
{
    public const string Letter = "letter",
        Contact = "contact",
        Stages = "move-on",
        Retest = "retest",
        Readings = "readings";

    /// <summary>The name of each part, with what it is in a sentence to the coach.</summary>
    public static readonly Series<(string Name, string Said)> Names =
    [
        (Letter, "the letter"),
        (Contact, "who writes, whom to call, or what the programmes are"),
        ("client", "the client's name or language"),
        ("time", "the hour, the zone, or the minutes for a session"),
        ("health", "the answers, or the day on which they were asked"),
        ("sport", "the sports, or which side is which in them"),
        ("rules", "how much pain is all right, or what a pause asks"),
        (Stages, "when to go on from a stage to the next"),
        (Retest, "when the ranges are measured again"),
        (Readings, "what was measured"),
        ("glossary", "the words that are explained"),
    ];

    internal static IEnumerable<EditionPart> Of(Training training, Texts texts)
    {
        var (client, card) = (texts.Client, texts.Card);
        var programme = client.Programme;
        return Names.Select(part => new EditionPart(part.Name, TextHash.Of(TextsOf(part.Name))));

        IEnumerable<string> TextsOf(string name) =>
            name switch
            {
                Letter => TextHash.Parts(programme.Letter),
                Contact =>
                [
                    card.Name,
                    card.Coach,
                    card.Contact.Email,
                    card.Contact.Phone,
                    .. card.EmergencyIn(client.Country.Value) is { } call
                        ? new[] { call.Call, call.Unsure ?? "", call.Text ?? "" }
                        : [],
                    .. TextHash.Parts(card.Scope),
                ],
                "client" => [client.Name, client.Language],
                "time" => [$"{client.Hour:HH\\:mm}", client.Zone.Text, Text($"{client.Minutes}")],
                "health" =>
                [
                    client.Answered.Iso(),
                    client.Agreed.Training.Iso(),
                    client.Agreed.Guardian?.Iso() ?? "",
                    .. training.Asked.Select(c => $"{c}: {Said(client.AnswerTo(c)?.Reply)}"),
                ],
                "sport" => [.. client.Sports.SelectMany(s => SportOf(s, texts))],
                "rules" =>
                [
                    Text($"{training.Rules.DaysBackOneWeek} {training.Rules.DaysBackToFirst}"),
                    Text($"{training.Rules.EaseOffAbove} {training.Rules.StopAbove}"),
                ],
                Stages => programme.MoveOn.SelectMany(c => c.Conditions.Prepend(Kebab.Of(c.Stage.ToString()))),
                Retest => programme.Retest is { } again ? [again.From.Iso(), again.Until.Iso()] : [],
                Readings => client.Readings.Select(Row),
                "glossary" => texts.Glossary.SelectMany(g => new[] { g.Word, g.Explanation }),
                _ => throw new NotSupportedException(name),
            };
    }

    private static IEnumerable<string> SportOf(SportStance played, Texts texts)
    {
        var sport = texts.Of(played.Sport.Value);
        return sport
            .Roles.Select(r => $"{r.Shown} {r.For(played.Stance).Word()}")
            .Prepend(sport.StanceQuestion)
            .Prepend(played.Stance.Word())
            .Prepend(sport.Name);
    }

    private static string Said(Reply? reply) =>
        reply switch
        {
            null => "not asked",
            Reply.No => "no",
            Reply.Yes(var side) => "yes" + (side is { } one ? " " + one.Word() : ""),
            Reply.Pains(var places) => string.Join(", ", places),
            _ => "unread",
        };

    private static string Row(RangeReading reading) =>
        string.Join(
            ' ',
            reading.Date.Iso(),
            reading.Motion.Name,
            reading.Side?.Word(),
            Kebab.Of(reading.Mode.ToString()),
            Text($"{reading.Value}"),
            reading.Instrument,
            Text($"{reading.Trials}"),
            reading.IsAfterTraining ? "after training" : ""
        );

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
