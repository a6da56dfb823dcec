namespace Gradus.Domain;

/// <summary>Holds the terms of a dose against those of its exercise, where they act in the dose.</summary>
internal static class EnvelopeTerms
{
    public static IEnumerable<Departure> Compare(Dose envelope, Dose written)
    {
        var (allowed, own) = (envelope.Terms, written.Terms);
        return
        [
            .. written.Sets.High > 1 || own.Plus is not null ? Less("rest", allowed.Rest, own.Rest) : [],
            .. written.Actions.Any(a => a.Times is { High: > 1 }) ? Less("pause", allowed.Pause, own.Pause) : [],
            .. Switches(allowed.Switch, own.Switch),
            .. own.Side is SideTerm.Each ? PlusSets(allowed.Plus, own.Plus) : [],
            .. written.Actions.Any(a => a.Amount is Amount.Reps) ? Reps(allowed, own) : [],
        ];
    }

    /// <summary>Less rest is on the hard side.</summary>
    private static IEnumerable<Departure> Less(string term, Seconds? range, Seconds? own)
    {
        var (allowed, written) = (range ?? Seconds.Zero, own ?? Seconds.Zero);
        if (allowed == written)
            yield break;
        yield return new(
            written < allowed ? DepartureSide.Hard : DepartureSide.Easy,
            $"{Words(term, written)}, the exercise allows {(allowed == Seconds.Zero ? $"no {term}" : Time(allowed))}"
        );
    }

    private static IEnumerable<Departure> Switches(Seconds? allowed, Seconds? written)
    {
        if (allowed is { } range && written is { } own && range != own)
            yield return new(DepartureSide.Easy, $"switch {Time(own)}, the exercise allows {Time(range)}");
    }

    private static IEnumerable<Departure> PlusSets(Plus? allowed, Plus? written)
    {
        var (range, own) = (new Count(allowed?.Sets ?? 0), new Count(written?.Sets ?? 0));
        if (allowed is not null && written is not null && allowed.Side != written.Side)
            return
            [
                new(DepartureSide.Hard, $"{More(own)} on {written.Side}, the exercise allows {More(range)} on {allowed.Side}"),
            ];
        return EnvelopeNumbers.Compare(range, own, More);
    }

    private static IEnumerable<Departure> Reps(DoseTerms allowed, DoseTerms written)
    {
        if (allowed.Tempo is { } range && written.Tempo is { } own && range != own)
        {
            var side = own.Seconds > range.Seconds ? DepartureSide.Hard : DepartureSide.Easy;
            yield return new(side, $"tempo {own}, the exercise allows {range}");
        }

        if (allowed.Leave is not { } least || least == (written.Leave ?? 0))
            yield break;
        yield return new(
            (written.Leave ?? 0) < least ? DepartureSide.Hard : DepartureSide.Easy,
            $"leave {new Count(written.Leave ?? 0)}, the exercise allows leave {new Count(least)}"
        );
    }

    private static string More(Count sets) =>
        sets.High == 0 ? "no set more" : EnvelopeNumbers.Counted(sets, "set more", "sets more");

    private static string Words(string term, Seconds seconds) =>
        seconds == Seconds.Zero ? $"no {term}" : $"{term} {Time(seconds)}";

    private static string Time(Seconds seconds) => DosePrinter.Time(seconds.Value);
}
