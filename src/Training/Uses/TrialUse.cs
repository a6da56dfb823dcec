using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>An exercise as though the client did it, to see what would stand in the way.</summary>
internal sealed class TrialUse(Practice practice, Client client)
{
    private static readonly HashSet<int> NothingBegins = [];

    private readonly WeekDoses doses = new(client.Programme, Stances.Of(practice, client), practice.Card.Settings);

    private readonly WeekDoses whole = new(
        client.Programme with
        {
            Lighter = [],
        },
        Stances.Of(practice, client),
        practice.Card.Settings
    );

    /// <summary>The exercise instead of another, in the weeks of that use and on its side.</summary>
    public Use Instead(Use use, Exercise exercise)
    {
        var written = use.Written with { ByWeek = [], Versions = [] };
        return Screening.Screened(
            practice,
            client,
            new(exercise.Drill, use.Session, null, doses.Of(exercise, written, null, NothingBegins).Weeks, Aside.Of(written))
        );
    }

    /// <summary>The exercise at the high end of its own dose through the whole programme: however far it grows, that is the most
    /// it can come to.</summary>
    /// <param name="side">The one side it is done on; null for the sides that its dose names.</param>
    public Use Whole(Exercise exercise, Side? side)
    {
        var written = new ProgrammeUse(
            new(exercise.Id, exercise.At),
            side is { } one ? new(new SideTerm.On(new SideName.Body(one)), exercise.At) : null,
            exercise.Dose.Dose is { } dose
                ? [new(1, exercise.Dose with { Reading = new DoseLineResult.Understood(dose.High()) })]
                : [],
            null,
            null,
            [],
            null,
            [],
            false
        );
        return Screening.Screened(
            practice,
            client,
            new(exercise.Drill, 1, null, whole.Of(exercise, written, null, NothingBegins).Weeks, Aside.Of(written))
        );
    }
}
