using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>A made library with its clients, and the files that a coach would have written.</summary>
internal sealed record MadePractice(MadeLibrary Library, MadeClient[] Clients)
{
    public static MadePractice Of(Chance chance, int clients)
    {
        var library = MadeLibrary.Of(chance);
        var made = Enumerable.Range(0, clients).Select(i => MadeClient.Of(chance, $"m{i}", library)).ToArray();
        return new(library, [.. made.Select(m => chance.Below(4) == 0 ? Told(chance, m) : m)]);
    }

    /// <summary>With a log; and now and then a clinician's word on it: a leave for signs or for pain, before it or
    /// after.</summary>
    private static MadeClient Told(Chance chance, MadeClient client)
    {
        var log = MadeEntry.LogOf(chance, client.Answered);
        var on = log[^1].Day.AddDays(chance.Below(4) - 1);
        var isSign = SecondReturned.SignCounts(client with { Log = log }, ProofSlip.None);
        MadeClearance[] word = (isSign && chance.Below(4) > 0 ? 1 : chance.Below(3)) switch
        {
            0 => [new("pain-now", on, on.AddYears(1), [])],
            1 when client.Clearances.All(c => c.Condition != "signs-or-symptoms") =>
            [
                new(
                    "signs-or-symptoms",
                    on,
                    chance.Below(3) == 0 ? client.Answered.AddDays(-chance.Below(3)) : on.AddYears(1),
                    chance.Below(3) == 0 ? ["effort at most 50 %"] : []
                ),
            ],
            _ => [],
        };
        return client with { Log = log, Clearances = [.. client.Clearances, .. word.Where(w => w.Until >= w.On)] };
    }

    public LittlePractice Files()
    {
        var practice = Club
            .Empty.Settings(
                $"{{ breath: 10 s, answers-last: {Library.AnswersLast} days, youth-effort: {Library.YouthEffort} % }}"
            )
            .With(
                "conditions.yaml",
                string.Concat(
                    MadeLibrary.Own.Select(c =>
                        $"- id: {c.Id}\n  name: {c.Id}\n  question: Is there {c.Id}?\n  where: "
                        + $"{c.Where}\n{(c.IsSided ? "  sided: yes\n" : "")}"
                        + string.Concat(
                            Library
                                .Traits.Where(t => t.Condition == c.Id)
                                .Select(t => $"  {(t.IsNotWith ? "not-with" : "clear-first")}-for: {{ {t.Key}: [{t.Value}] }}\n")
                        )
                    )
                )
            );
        foreach (var exercise in Library.Exercises)
            practice = practice.With($"exercises/{exercise.Id}.md", Text(exercise));
        foreach (var client in Clients)
            practice = practice
                .With($"clients/{client.Id}/client.yaml", Text(client))
                .With($"clients/{client.Id}/programme.md", ProgrammeOf(client));
        foreach (var client in Clients.Where(c => c.Log.Length > 0))
            practice = practice.With(
                $"clients/{client.Id}/log.csv",
                $"{MadeEntry.Head}\n{string.Concat(client.Log.Select(e => e.Line + "\n"))}"
            );
        return practice;
    }

    private static string Text(MadeExercise exercise) =>
        $"""
            ---
            title: {exercise.Title}
            trains: {exercise.Motion}
            stage: {exercise.Stage}
            position: {exercise.Position}
            {(exercise.Loads is { } loads ? $"loads: [{string.Join(", ", loads)}]" : "# loads: what its position loads")}
            dose: {(exercise.IsFixed ? exercise.Dose.Lines[0].Text : exercise.Dose.Envelope)}{exercise.Dose.Terms}{(
                exercise.IsPaired ? ", each side" : ""
            )}
            signs: [sharp-stab, calf-pull]
            not-with: [{string.Join(", ", exercise.NotWith)}]
            clear-first: [{string.Join(", ", exercise.ClearFirst)}]
            properties: [{string.Join(", ", exercise.Properties)}]
            {(exercise.Easier is { } easier ? $"easier: {easier}\nharder: {exercise.Harder}" : "# no versions")}
            ---
            ## Do
            Go.
            """;

    private static string Text(MadeClient client) =>
        $"""
            name: Client {client.Id}
            sport: epee
            stance: {client.Plays}
            born: {client.Born}
            country: GB
            language: en
            zone: Europe/London
            days: [Mon]
            minutes: 240
            agreed: {"{ training: "
                + Day(client.Agreed)
                + (client.Guardian is { } guardian ? $", guardian: {Day(guardian)}" : "")
                + " }"}
            answered: {Day(client.Answered)}
            answers:
            {string.Join('\n', client.Answers.Select(a => $"  {a.Key}: {a.Value}"))}
            {(
                client.Clearances.Length == 0
                    ? "# no clearances"
                    : "clearances:\n"
                        + string.Join(
                            '\n',
                            client.Clearances.Select(c =>
                                $"  - {{ condition: {c.Condition}, by: a doctor, on: {Day(c.On)}, until: {Day(c.Until)}{(c.Limits.Length > 0 ? $", limit: [{string.Join(", ", c.Limits)}]" : "")} }}"
                            )
                        )
            )}
            """;

    private string ProgrammeOf(MadeClient client)
    {
        var (own, other) = (
            client.Sessions.Where(s => !s.IsAlternate).ToArray(),
            client.Sessions.Where(s => s.IsAlternate).ToArray()
        );
        return $"""
            ---
            title: Footwork
            start: {Day(client.Start)}
            weeks: {client.Weeks}
            sessions:
            {string.Concat(
                own.Select((s, i) => $"  - name: Session {i + 1}\n    days: [Mon]\n    do:\n{string.Concat(s.Uses.Select(Text))}")
            )}
            {(
                other.Length == 0
                    ? "# no alternates"
                    : "alternate:\n"
                        + string.Concat(
                            other.Select(s =>
                                $"  - name: Another\n    instead-of: Session 1\n    kind: travel\n    do:\n{string.Concat(s.Uses.Select(Text))}"
                            )
                        )
            )}
            ---
            Train well.
            """;
    }

    private string Text(MadeUse use)
    {
        var lines = Library.Exercises.Single(e => e.Id == use.Exercise).Dose.Lines;
        var side = use.Side is { } named ? $"        side: {named}\n" : "";
        var weeks =
            use.Weeks.Length == 0
                ? ""
                : "        by-week:\n"
                    + string.Concat(
                        use.Weeks.Select(w =>
                            $"          {w.Week}: {(w.Line is { } line ? lines[line].Text : $"{{ use: {w.Version} }}")}\n"
                        )
                    );
        return $"      - use: {use.Exercise}\n{side}        from-week: {use.From}\n        until-week: {use.Until}\n{weeks}";
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
