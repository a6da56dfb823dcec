using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What is other in a dose than in the one before, in plain words.</summary>
internal static class ChangeWords
{
    /// <summary>"1 more set, hold 15 seconds longer", held against the last week that was not lighter; of a lighter week against
    /// the week before.</summary>
    /// <param name="weeks">Those of one use.</param>
    /// <param name="at">The place of the week among them.</param>
    public static string Of(Series<WeekDose> weeks, int at, Limb limb, DoseSettings settings, Words words)
    {
        var now = weeks[at];
        if (at == 0)
            return words.Say("change-first");
        var before = weeks.Take(at).LastOrDefault(w => !w.IsLighter) ?? weeks[at - 1];

        // An exercise may grow all the same in a week that is lighter as a whole.
        if (now.IsLighter && now.Measures(settings).Seconds.Value <= before.Measures(settings).Seconds.Value)
            return words.Say("change-lighter", ("changes", Listed(weeks[at - 1], now, limb, settings, words)));
        if (now.Dose == before.Dose && now.Role == before.Role)
            return words.Say("change-back", ("week", before.Week));
        var changes = Listed(before, now, limb, settings, words);
        return before.Week == now.Week - 1 ? changes : words.Say("change-against", ("week", before.Week), ("changes", changes));
    }

    private static string Listed(WeekDose before, WeekDose now, Limb limb, DoseSettings settings, Words words)
    {
        var changes = Between(before, now, limb, settings, words).Distinct(StringComparer.Ordinal).ToArray();
        return changes.Length > 0 ? words.Joined(changes, "comma") : words.Say("change-none");
    }

    private static IEnumerable<string> Between(WeekDose before, WeekDose now, Limb limb, DoseSettings settings, Words words)
    {
        var (old, dose) = (before.Dose, now.Dose);
        if (Counted("sets", old.Sets.Low, dose.Sets.Low, words) is { } sets)
            yield return sets;
        if (!SameShape(old, dose))
        {
            yield return words.Say("change-work");
        }
        else
        {
            foreach (var (was, work) in old.Parts.Zip(dose.Parts))
            {
                if (Counted("rounds", was.Times.Low, work.Times.Low, words) is { } rounds)
                    yield return rounds;
                foreach (var change in was.Actions.Zip(work.Actions).SelectMany(pair => Actions(pair.First, pair.Second, words)))
                    yield return change;
            }
        }

        foreach (var change in Terms(before, now, limb, settings, words))
            yield return change;
    }

    private static IEnumerable<string> Actions(DoseAction was, DoseAction now, Words words)
    {
        if (Counted("times", was.Times?.Low ?? 1, now.Times?.Low ?? 1, words) is { } times)
            yield return times;
        var (old, amount) = (was.Amount.Number.Low, now.Amount.Number.Low);
        var changed = now.Amount switch
        {
            Amount.Span => Timed("change-" + now.Verb.Word(), old, amount, words),
            Amount.Breaths => Counted("breaths", old, amount, words),
            Amount.Reps => Counted("reps", old, amount, words),
            _ => Counted("metres", old, amount, words),
        };
        if (changed is not null)
            yield return changed;
        if (was.Effort == now.Effort)
            yield break;
        yield return now.Effort switch
        {
            Effort.Steady steady => words.Say(
                "change-effort",
                ("effort", words.Say("at-per-cent", ("percent", steady.Percent.Low)))
            ),
            Effort.Ramp ramp => words.Say("change-ramp", ("first", ramp.First.Low), ("last", ramp.Last.Low), ("n", ramp.Steps)),
            Effort.Felt felt => words.Say("change-effort", ("effort", words.Say("felt-effort", ("rating", felt.Rating)))),
            _ => words.Say("change-no-effort"),
        };
    }

    private static IEnumerable<string> Terms(WeekDose before, WeekDose now, Limb limb, DoseSettings settings, Words words)
    {
        var (old, terms) = (before.Dose.Terms, now.Dose.Terms);
        if (
            Timed("change-rest", old.Rest?.Value ?? 0, terms.Rest?.Value ?? 0, words) is { } rest
            && now.Dose.Sets.Low > 1
            && before.Dose.Sets.Low > 1
        )
            yield return rest;
        if (Timed("change-pause", old.Pause?.Value ?? 0, terms.Pause?.Value ?? 0, words) is { } pause)
            yield return pause;
        if (
            ChangesSides(old)
            && ChangesSides(terms)
            && Timed("change-switch", DoseTime.Switch(old, settings).Value, DoseTime.Switch(terms, settings).Value, words)
                is { } change
        )
            yield return change;
        if (old.Plus != terms.Plus)
            yield return terms.Plus is { } plus
                ? words.Say(
                    "change-plus",
                    ("sets", words.Say("more-sets", ("n", plus.Sets))),
                    ("side", SideWords.Of(Use.SidesOf(now.Dose)[0], limb, words))
                )
                : words.Say("change-no-plus");
        if (old.Side != terms.Side)
            yield return terms.Side is null
                ? words.Say("change-no-side")
                : words.Say("change-side", ("side", SideWords.Of(now.Dose, now.Role, limb, words)));
        if (old.Tempo != terms.Tempo)
            yield return terms.Tempo is { } tempo
                ? words.Say("change-tempo", ("tempo", DoseWords.Of(tempo, words)))
                : words.Say("change-no-tempo");
        if (old.Load != terms.Load)
            yield return terms.Load is { } load ? words.Say("with-load", ("load", load)) : words.Say("change-no-load");
        if (old.Leave != terms.Leave)
            yield return terms.Leave is { } leave ? words.Say("leave", ("n", leave)) : words.Say("change-no-leave");
    }

    private static bool ChangesSides(DoseTerms terms) => terms.Side is SideTerm.Each or SideTerm.Alternate;

    private static bool SameShape(Dose one, Dose other) =>
        one.Parts.Count == other.Parts.Count
        && one.Parts.Zip(other.Parts)
            .All(p =>
                p.First.Actions.Count == p.Second.Actions.Count
                && p.First.Actions.Zip(p.Second.Actions)
                    .All(a => a.First.Verb == a.Second.Verb && a.First.Amount.GetType() == a.Second.Amount.GetType())
            );

    private static string? Counted(string what, int before, int now, Words words) =>
        now == before ? null : words.Say($"change-{what}-{(now > before ? "more" : "fewer")}", ("n", Math.Abs(now - before)));

    private static string? Timed(string key, int before, int now, Words words) =>
        now == before
            ? null
            : words.Say($"{key}-{(now > before ? "longer" : "shorter")}", ("time", words.Span(new(Math.Abs(now - before)))));
}
