using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>When each use of a programme begins, so that no other that trains the same grows in that week too. What goes by the
/// days of play is in no week's total, and takes no part.</summary>
internal sealed class Beginnings
{
    private readonly Beginning[] all;

    private Beginnings(Beginning[] all) => this.all = all;

    public static Beginnings Of(Practice practice, Programme programme, Stances stances) =>
        new([
            .. from session in programme.Sessions
            where session.Days is not SessionDays.BeforePlay
            from written in session.Do
            let exercise = practice.Find(written.Exercise.Value)
            where exercise is not null
            let dose = exercise.Dose.Dose
            where dose is not null
            select Beginning.Of(programme, written, exercise, dose, stances, practice.Card.Settings.Dose),
        ]);

    /// <summary>The weeks after its first in which other work of the same motion, side and measure begins.</summary>
    public IReadOnlySet<int> Beside(ProgrammeUse written)
    {
        var own = Array.Find(all, b => ReferenceEquals(b.Written, written));
        return own is null
            ? new HashSet<int>()
            : all.Where(other => other.First > own.First && other.TrainsLike(own)).Select(b => b.First).ToHashSet();
    }

    private sealed record Beginning(ProgrammeUse Written, Motion Motion, Side?[] Sides, SideMeasure[] Measures, int First)
    {
        public static Beginning Of(
            Programme programme,
            ProgrammeUse written,
            Exercise exercise,
            Dose dose,
            Stances stances,
            DoseSettings settings
        )
        {
            var side = written.Side?.Value ?? dose.Terms.Side;
            return new(
                written,
                exercise.Drill.Trains,
                side switch
                {
                    null => [null],
                    SideTerm.On(var one) => [stances.Resolve(one)],
                    _ => [Side.Left, Side.Right],
                },
                [.. SideWork.Of(dose.Low().Settled(), settings).Measures.Where(m => m.Amount > 0).Select(m => m.Measure)],
                Math.Max(written.FromWeek ?? 1, programme.EntriesOf(written).FirstOrDefault(1))
            );
        }

        public bool TrainsLike(Beginning other) =>
            Motion == other.Motion && Sides.Intersect(other.Sides).Any() && Measures.Intersect(other.Measures).Any();
    }
}
