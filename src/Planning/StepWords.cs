using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What an item of a session's list says.</summary>
internal static class StepWords
{
    /// <summary>"Hold: Half-kneeling ankle rock, left leg". The side is the only one an item names.</summary>
    public static string Of(StepKind kind, Exercise exercise, Side? side, Words words)
    {
        var who = side is { } one
            ? words.Say(
                "exercise-and-side",
                ("exercise", exercise.Title),
                ("side", SideWords.Of(one, exercise.Trains.Limb, words))
            )
            : exercise.Title;
        return words.Say("step-" + Kebab.Of(kind.ToString()), ("exercise", who));
    }

    /// <summary>"Set 1 of 2, step 3 of 4, at 60 % of the hardest you could do".</summary>
    /// <param name="dose">The dose of the week that the step is from.</param>
    public static string Detail(TimelineStep.Work step, Dose dose, int sets, Words words)
    {
        var action = step.Action;
        var said = new List<string>();
        if (sets > 1)
            said.Add(words.Say("set-of", ("set", step.Set), ("sets", sets)));
        if (dose.Parts.Any(p => p.Times.Low > 1))
            said.Add(words.Say("round-of", ("round", step.Round), ("rounds", RoundsOf(action, dose))));
        if (action.Times is { Low: > 1 } times)
            said.Add(words.Say("time-of", ("time", step.Repetition), ("times", times.Low)));
        if (action.Amount is Amount.Breaths breaths)
            said.Add(words.Say("breaths", ("n", breaths.Number.Low)));
        if (action.Amount is Amount.Reps reps)
            said.Add(words.Say("repetitions", ("n", reps.Number.Low)));
        if (action.Amount is Amount.Metres metres)
            said.Add(words.Say("metres", ("n", metres.Number.Low)));
        if (step.RampStep is { } rung && action.Effort is Effort.Ramp ramp)
            said.Add(words.Say("step-of", ("step", rung), ("steps", ramp.Steps)));
        if (step.EffortPercent is { } percent)
            said.Add(words.Say("at-per-cent", ("percent", percent)));
        if (step.FeltEffort is { } felt)
            said.Add(words.Say("felt-effort", ("rating", felt)));
        if (dose.Terms.Tempo is { } tempo && action.Amount is Amount.Reps)
            said.Add(DoseWords.Of(tempo, words));
        if (dose.Terms.Load is { } load)
            said.Add(words.Say("with-load", ("load", load)));
        if (DoseProperties.AsksForBreath(action))
            said.Add(words.Say("keep-breathing"));
        if (dose.Terms.Leave is { } leave && action.Amount is Amount.Reps)
            said.Add(words.Say("leave", ("n", leave)));
        return words.Joined(said, "comma");
    }

    private static int RoundsOf(DoseAction action, Dose dose) =>
        dose.Parts.First(p => p.Actions.Any(a => ReferenceEquals(a, action))).Times.Low;
}
