using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Puts the steps of one session together, one use or one block of rounds after the other.</summary>
/// <param name="words">Null where only the times are asked for: then no step says anything.</param>
internal sealed class SessionSteps(PracticeSettings settings, Words? words)
{
    private readonly List<Step> steps = [];
    private Exercise? before;

    /// <param name="done">The uses of the session and their doses in one week, in order.</param>
    public Series<Step> Of(IReadOnlyList<(Use Use, WeekDose Dose)> done)
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

        return steps.ToSeries();
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
        var times = block.Max(b => b.Dose.Dose.Sets.Low);
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
        var dose = week.Dose;
        foreach (var step in timeline.Steps)
        {
            var side = step.Side is { } ordered ? Use.SidesOf(dose)[ordered == DoseSide.First ? 0 : 1] : FirstSide(dose);
            var detail =
                words is not null && step is TimelineStep.Work work
                    ? StepWords.Detail(round is { } set ? work with { Set = set } : work, dose, SetsOf(dose, step.Side), words)
                    : "";
            var plain = new Step(step.Kind, use.Exercise.Id, side, step.Seconds, Said(step.Kind, use, side), detail);
            steps.Add(step is TimelineStep.Work done ? Measured(plain, done, round, dose) : plain);
        }

        before = use.Exercise;
    }

    private static Step Measured(Step step, TimelineStep.Work work, int? round, Dose dose) =>
        step with
        {
            Percent = work.EffortPercent,
            Felt = work.FeltEffort,
            Breaths = (work.Action.Amount as Amount.Breaths)?.Number.Low,
            Set = round ?? work.Set,
            Repetitions = (work.Action.Amount as Amount.Reps)?.Number.Low,
            Load = dose.Terms.Load,
        };

    private void Add(Use use, WeekDose week, StepKind kind, Seconds seconds)
    {
        var side = FirstSide(week.Dose);
        if (seconds > Seconds.Zero)
            steps.Add(new(kind, use.Exercise.Id, side, seconds, Said(kind, use, side), ""));
    }

    private string Said(StepKind kind, Use use, Side? side) => words is null ? "" : StepWords.Of(kind, use.Exercise, side, words);

    private static Side? FirstSide(Dose dose) => dose.Terms.Side is null or SideTerm.Both ? null : Use.SidesOf(dose)[0];

    private static int SetsOf(Dose dose, DoseSide? side) =>
        dose.Sets.Low + (side == DoseSide.First ? dose.Terms.Plus?.Sets ?? 0 : 0);
}
