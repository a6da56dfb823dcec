using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Puts the steps of one session together, one use or one block of rounds after the other.</summary>
internal sealed class SessionSteps(PracticeSettings settings)
{
    private readonly List<(SessionStep Step, Position Position)> steps = [];
    private Drill? before;

    /// <param name="done">The uses of the session and their doses in one week, in order.</param>
    /// <returns>Each with the position it is done in.</returns>
    public IReadOnlyList<(SessionStep Step, Position Position)> Of(IReadOnlyList<(Use Use, WeekDose Dose)> done)
    {
        for (var i = 0; i < done.Count; )
        {
            var rounds = done[i].Use.Written.Rounds;
            var block = rounds is null ? 1 : done.Skip(i).TakeWhile(d => d.Use.Written.Rounds == rounds).Count();
            if (rounds is null)
                Alone(done[i].Use, done[i].Dose);
            else
                InRounds([.. done.Skip(i).Take(block)], rounds);
            i += block;
        }

        return steps;
    }

    private void Alone(Use use, WeekDose week)
    {
        Lead(use, week, null);
        GetReady(use, week);
        Work(use, week, Timeline.Of(week.Dose, settings.Dose), null);
    }

    /// <summary>One set of each use a round; a round's rest stands between the last use and the first of the next
    /// round.</summary>
    private void InRounds((Use Use, WeekDose Dose)[] block, Rounds rounds)
    {
        var times = block.Max(b => b.Dose.Dose.Sets);
        for (var round = 1; round <= times; round++)
        {
            foreach (var (index, (use, week)) in block.Index())
            {
                if (index > 0)
                    Lead(use, week, rounds.Change);
                else if (round == 1)
                    Lead(use, week, null);
                else if (rounds.Rest is { } rest)
                    Add(use, week, StepKind.Rest, rest);
                else
                    Lead(use, week, null);
                if (round == 1)
                    GetReady(use, week);
                Work(use, week, Timeline.Of(week.OneSet, settings.Dose), round);
            }
        }
    }

    /// <summary>From the exercise before to this one.</summary>
    /// <param name="change">What the coach gives for it; null for the practice's own times.</param>
    private void Lead(Use use, WeekDose week, Seconds? change)
    {
        if (before is not null)
            Add(use, week, StepKind.Transition, change ?? Transitions.Between(before, use.Exercise, settings));
        before = use.Exercise;
    }

    private void GetReady(Use use, WeekDose week) => Add(use, week, StepKind.GetReady, settings.GetReady);

    private void Work(Use use, WeekDose week, Timeline timeline, int? round)
    {
        foreach (var step in timeline.Steps)
        {
            var piece = step as TimelineStep.Work;
            if (piece is not null && round is { } set)
                piece = piece with { Place = piece.Place with { Set = set, Sets = week.Dose.Sets } };
            Add(
                use,
                new(step.Kind, use.Exercise.Id, step.Side, step.Seconds, piece is null ? null : new(piece, week.Dose), use.Source)
            );
        }

        before = use.Exercise;
    }

    private void Add(Use use, WeekDose week, StepKind kind, Seconds seconds)
    {
        if (seconds > Seconds.Zero)
            Add(use, new(kind, use.Exercise.Id, week.Dose.Sides.Begins, seconds, null, use.Source));
    }

    private void Add(Use use, SessionStep step) => steps.Add((step, use.Exercise.Position));
}
