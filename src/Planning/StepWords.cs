using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What an item of a session's list says.</summary>
internal static class StepWords
{
    /// <summary>"B hold, left leg". The side is the only one an item names.</summary>
    public static string Of(SessionStep step, string letter, Texts texts)
    {
        var words = texts.Words;
        var done = words.Say("step-" + Kebab.Of(step.Kind.ToString()), ("letter", letter));
        return step.Side is { } one
            ? words.Say("step-on-side", ("step", done), ("side", SideWords.Of(one, texts.Of(step.Exercise).Trains.Limb, words)))
            : done;
    }

    /// <summary>"set 1 of 2, step 3 of 4, 60%"; empty where nothing is done.</summary>
    public static string Detail(StepWork? work, Words words)
    {
        if (work is null)
            return "";
        var (piece, dose) = (work.Piece, work.Dose);
        var (action, place) = (piece.Action, piece.Place);
        var said = new List<string>();
        if (place.Sets > 1)
            said.Add(words.Say("set-of", ("set", place.Set), ("sets", place.Sets)));
        if (dose.Parts.Any(p => p.Times > 1))
            said.Add(words.Say("round-of", ("round", place.Round), ("rounds", place.Rounds)));
        if (action.Times is > 1)
            said.Add(words.Say("time-of", ("time", place.Repetition), ("times", action.Times.Value)));
        if (Counted(action, words) is { } counted)
            said.Add(counted);
        if (piece.RampStep is { } rung && action.Effort is SettledEffort.Ramp ramp)
            said.Add(words.Say("step-of", ("step", rung), ("steps", ramp.Steps)));
        if (piece.EffortPercent is { } percent)
            said.Add(words.Say("short-per-cent", ("n", percent)));
        if (piece.FeltEffort is { } felt)
            said.Add(words.Say("step-felt", ("rating", felt)));
        if (DoseProperties.AsksForBreath(action))
            said.Add(words.Say("keep-breathing"));
        var inReps = action.Unit == AmountUnit.Reps;
        if (inReps && dose.Tempo is { } tempo)
            said.Add(TempoWords.Of(tempo, words));
        if (inReps && dose.Leave is { } leave)
            said.Add(words.Say("leave", ("n", leave)));
        return words.Joined(said, "comma");
    }

    /// <summary>"8 breaths"; null for seconds, which the step's own time says.</summary>
    private static string? Counted(SettledAction action, Words words) =>
        action.Unit switch
        {
            AmountUnit.Seconds => null,
            AmountUnit.Breaths => words.Say("breaths", ("n", action.Amount)),
            AmountUnit.Reps => words.Say("repetitions", ("n", action.Amount)),
            AmountUnit.Metres => words.Say("metres", ("n", action.Amount)),
        };
}
