using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ContraindicatedExercise : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from objection in use.Against
        let said = Said(client, use, practice.Of(use.Exercise.Id), practice.Of(objection.Condition), objection)
        where said is not null
        select this.Found(
            Level.Error,
            client.Id,
            use.At,
            said.Value.Message + (objection is Objection.Forbidden ? ByTraits.Said(objection) : ""),
            (said.Value.Alone ?? Instead(practice, client, use) ?? said.Value.Help)
                + AsDifference(practice, client, use, said.Value.Alone is not null, today),
            use.Exercise.Id.Text.Length
        );

    private static string? Instead(Practice practice, Client client, Use use) =>
        Substitutes.For(practice, client, use) is { } other
            ? $"Take it out; '{other.Title}' ({other.Id}) would serve instead, and nothing rules it out. Read it "
                + "before you choose it."
            : null;

    /// <summary>Where others follow the same programme, the remedy is the client's own: ready to be pasted.</summary>
    /// <param name="asDose">Whether another dose is the remedy.</param>
    private static string AsDifference(Practice practice, Client client, Use use, bool asDose, DateOnly today)
    {
        // What the client's own difference brings in is taken out there, and not by another one.
        if (client.Programme.From is not { } from || use.At.File != SharedProgramme.PathOf(from.Programme.Value))
            return "";
        var (name, beside) = client.Programme.AllSessions.Select(s => Placed(s.Do, use)).FirstOrDefault(p => p is not null)
            ?? (use.Exercise.Id.Text, null);
        var what =
            asDose ? $"change: {name}, by-week: {{ 1: ... }}"
            : Substitutes.For(practice, client, use) is not { } other ? $"leave-out: {name}"
            : beside is null || WeekNow(client.Programme, today) is not (> 1 and var week) ? $"instead: {name}, use: {other.Id}"
            // A week that is over stays as it was asked.
            : $"leave-out: {name}, because: \"...\" }} and - {{ add: {other.Id}, {beside}, from-week: {week}";
        return $" Others follow this programme: write it under 'differences' in clients/{client.Id}/programme.md, as "
            + $"- {{ {what}, because: \"...\" }}";
    }

    /// <summary>What the use is called in a session, and where that is from the one beside it; null where it is not in
    /// it.</summary>
    private static (string Name, string? Beside)? Placed(Series<ProgrammeUse> uses, Use use)
    {
        for (var at = 0; at < uses.Count; at++)
            if (uses[at].Exercise.At == use.At)
                return (
                    uses[at].Name,
                    at > 0 ? $"after: {uses[at - 1].Name}"
                    : uses.Count > 1 ? $"before: {uses[1].Name}"
                    : null
                );
        return null;
    }

    /// <summary>The first before the programme begins; 0 when it is over.</summary>
    private static int WeekNow(Programme programme, DateOnly today) =>
        Enumerable.Range(1, programme.Weeks).FirstOrDefault(week => today <= programme.LastDayOf(week));

    /// <summary>What is wrong and what helps; <c>Alone</c> is the remedy where another exercise would be none.</summary>
    private static (string Message, string Help, string? Alone)? Said(
        Client client,
        Use use,
        Exercise exercise,
        Condition condition,
        Objection objection
    ) =>
        objection switch
        {
            Objection.Forbidden => (
                $"'{exercise.Title}' is not done with {condition.Name}, and {client.Name} "
                    + (client.SignFor(condition.Id) is { } sign ? $"told of one on {sign.Day.Iso()}." : "answered yes."),
                "Take it out, or choose an exercise that does not name this condition.",
                null
            ),
            Objection.Loaded loaded => (
                $"'{exercise.Title}' loads the {condition.Where.On(loaded.Side)}, and {client.Name} answered "
                    + $"yes{(loaded.Side is { } side ? ", " + side.Word() : "")} to {condition.Name}.",
                "Take it out, do it on the other side, or choose an exercise that does not load this place.",
                null
            ),
            Objection.Painful { IsTooMuch: false } painful => (
                $"'{exercise.Title}' is hard, loaded or jumped, and {client.Name} has pain of {painful.Pain.Level} out of 10 "
                    + $"in the {painful.Pain.Where.On(painful.Pain.Side)}.",
                "Take it out, or write a gentle dose; ask again when the pain is less, and write the new answer.",
                null
            ),
            Objection.TooEarly early => (
                $"'{exercise.Title}' is hard work in week {early.Week.Week}, and {client.Name} is not regularly active: the "
                    + $"first {Hardness.GentleWeeks} weeks are gentle.",
                "",
                $"Choose an effort below 70 % (7 of 10) until week {Hardness.GentleWeeks}, and write it in the dose, or begin it "
                    + "later."
            ),
            Objection.BeyondLimit beyond => (
                $"'{exercise.Title}' goes beyond the clearance for {condition.Name} in week "
                    + $"{beyond.Week.Week}: {beyond.Limit.Words}.",
                "",
                $"Write a dose within the limit; it is now '{beyond.Week.Dose}'.{use.LastWithin(beyond.Week)}"
            ),
            _ => null,
        };
}
