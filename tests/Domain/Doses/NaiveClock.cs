using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Mistakes that somebody who adds up a dose may make.</summary>
internal enum Slip
{
    None,
    SwitchTwice,
    RestAfterTheLastSet,
    PlusForgotten,
    PlusWithoutItsRest,
    PauseBetweenReps,
    PauseBetweenRounds,
    PauseAfterTheLastRepetition,
    RestAndSwitchBetweenAlternateSets,
    SwitchOnceUnderAlternateSides,
    RoundsForgotten,
    OneSideForgotten,
    FastBeatIsNothing,
    BothSidesOnceEach,
}

/// <summary>Adds up a settled dose the slow way, second by second in the order it is done: no formula and nothing of the
/// product's own arithmetic. With a slip it makes that mistake.</summary>
internal sealed class NaiveClock(Dose dose, DoseSettings settings, Slip slip)
{
    private readonly DoseTerms terms = dose.Terms;
    private int seconds;

    public static int Count(Dose dose, DoseSettings settings, Slip slip = Slip.None) =>
        new NaiveClock(dose, settings, slip).Run();

    private int Rest => terms.Rest?.Value ?? 0;

    private int Pause => terms.Pause?.Value ?? 0;

    private int Change => terms.Switch?.Value ?? settings.Switch.Value;

    private int Run()
    {
        switch (terms.Side)
        {
            case SideTerm.Each:
                Side();
                if (terms.Plus is { } plus && slip != Slip.PlusForgotten)
                    Plus(plus);
                seconds += Change;
                if (slip == Slip.SwitchTwice)
                    seconds += Change;
                if (slip != Slip.OneSideForgotten)
                    Side();
                break;
            case SideTerm.Alternate:
                Alternate();
                break;
            case SideTerm.Both when slip == Slip.BothSidesOnceEach:
                Side();
                Side();
                break;
            default:
                Side();
                break;
        }

        return seconds;
    }

    private void Side()
    {
        for (var set = 0; set < dose.Sets.Low; set++)
        {
            if (set > 0)
                seconds += Rest;
            Set();
        }

        if (slip == Slip.RestAfterTheLastSet)
            seconds += Rest;
    }

    private void Plus(Plus plus)
    {
        for (var set = 0; set < plus.Sets; set++)
        {
            if (slip != Slip.PlusWithoutItsRest)
                seconds += Rest;
            Set();
        }
    }

    private void Alternate()
    {
        for (var set = 0; set < dose.Sets.Low; set++)
        {
            if (set > 0 && slip == Slip.RestAndSwitchBetweenAlternateSets)
                seconds += Rest + Change;
            else if (set > 0)
                seconds += Rest > Change ? Rest : Change;
            Set();
            if (set == 0 || slip != Slip.SwitchOnceUnderAlternateSides)
                seconds += Change;
            if (slip != Slip.OneSideForgotten)
                Set();
        }
    }

    private void Set()
    {
        foreach (var part in dose.Parts)
        {
            var rounds = part is DosePart.Group(var times, _) && slip != Slip.RoundsForgotten ? times.Low : 1;
            for (var round = 0; round < rounds; round++)
            {
                if (round > 0 && slip == Slip.PauseBetweenRounds)
                    seconds += Pause;
                foreach (var action in part.Actions)
                    Repetitions(action);
            }
        }
    }

    private void Repetitions(DoseAction action)
    {
        for (var repetition = 0; repetition < (action.Times?.Low ?? 1); repetition++)
        {
            if (repetition > 0)
                seconds += Pause;
            for (var one = 0; one < action.Amount.Number.Low; one++)
            {
                if (one > 0 && action.Amount is Amount.Reps && slip == Slip.PauseBetweenReps)
                    seconds += Pause;
                seconds += One(action.Amount, one);
            }
        }

        if (slip == Slip.PauseAfterTheLastRepetition && action.Times is not null)
            seconds += Pause;
    }

    private int One(Amount amount, int before) =>
        amount switch
        {
            Amount.Span => 1,
            Amount.Breaths => settings.Breath.Value,
            Amount.Metres => before % settings.Carry.Value == 0 ? 1 : 0,
            _ when terms.Tempo is { } tempo => new[] { tempo.Lower, tempo.PauseLow, tempo.Raise, tempo.PauseHigh }.Sum(b =>
                b ?? (slip == Slip.FastBeatIsNothing ? 0 : 1)
            ),
            _ => settings.Repetition.Value,
        };
}
