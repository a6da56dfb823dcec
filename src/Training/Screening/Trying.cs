using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>An exercise as though the client did it, to see what would stand in the way.</summary>
internal sealed class Trying(Practice practice, Client client)
{
    private readonly Settling settling = new(client.Programme, Playing.Of(practice, client), practice.Card.Settings);

    /// <summary>The exercise instead of another, in the weeks of that use and on its side.</summary>
    public Use Instead(Use use, Exercise exercise)
    {
        var written = use.Written with { ByWeek = [], Versions = [] };
        return use with
        {
            Exercise = exercise,
            Written = written,
            Version = null,
            Weeks = settling.Weeks(exercise, written, null),
        };
    }

    /// <summary>The exercise with its own dose through the whole programme.</summary>
    /// <param name="side">The one side it is done on; null for the sides that its dose names.</param>
    public Use Whole(Exercise exercise, Side? side)
    {
        var written = new ProgrammeUse(
            new(exercise.Id, exercise.At),
            side is { } one ? new(one.Word(), exercise.At) : null,
            [],
            null,
            null,
            [],
            null,
            [],
            false
        );
        return new(exercise, written, 1, null, settling.Weeks(exercise, written, null));
    }
}
