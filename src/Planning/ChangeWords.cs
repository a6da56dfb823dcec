using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What is other in a dose than in the one before, in plain words.</summary>
internal static class ChangeWords
{
    /// <summary>"1 more set, hold 15 seconds longer", held against the last week that was not lighter.</summary>
    /// <param name="weeks">Those of one use.</param>
    /// <param name="at">The place of the week among them.</param>
    public static string Of(Series<WeekDose> weeks, int at, Limb limb, Texts texts)
    {
        var (now, words) = (weeks[at], texts.Words);
        if (at == 0)
            return words.Say("change-first");
        var before = weeks.Take(at).LastOrDefault(w => !w.IsLighter) ?? weeks[at - 1];

        if (now.IsLighter && now.Dose != before.Dose)
            return words.Say("change-lighter", ("changes", Listed(before, now, limb, texts)));
        if (now.Dose == before.Dose && now.Role == before.Role)
            return words.Say("change-back", ("week", before.Week));
        var changes = Listed(before, now, limb, texts);
        return before.Week == now.Week - 1 ? changes : words.Say("change-against", ("week", before.Week), ("changes", changes));
    }

    private static string Listed(WeekDose before, WeekDose now, Limb limb, Texts texts)
    {
        var changes = Between(before, now, limb, texts).Distinct(StringComparer.Ordinal).ToArray();
        return changes.Length > 0 ? texts.Words.Joined(changes, "comma") : texts.Words.Say("change-none");
    }

    private static IEnumerable<string> Between(WeekDose before, WeekDose now, Limb limb, Texts texts)
    {
        var (old, dose, words) = (before.Dose, now.Dose, texts.Words);
        if (Counted("sets", old.Sets, dose.Sets, words) is { } sets)
            yield return sets;
        if (!SameShape(old, dose))
        {
            yield return words.Say("change-work");
        }
        else
        {
            foreach (var (was, work) in old.Parts.Zip(dose.Parts))
            {
                if (Counted("rounds", was.Times, work.Times, words) is { } rounds)
                    yield return rounds;
                foreach (var change in was.Actions.Zip(work.Actions).SelectMany(pair => Actions(pair.First, pair.Second, words)))
                    yield return change;
            }
        }

        foreach (var change in Terms(before, now, limb, texts))
            yield return change;
    }

    private static IEnumerable<string> Actions(SettledAction was, SettledAction now, Words words)
    {
        if (Counted("times", was.Times ?? 1, now.Times ?? 1, words) is { } times)
            yield return times;
        var changed = now.Unit switch
        {
            AmountUnit.Seconds => Timed("change-" + now.Verb.Word(), was.Amount, now.Amount, words),
            AmountUnit.Breaths => Counted("breaths", was.Amount, now.Amount, words),
            AmountUnit.Reps => Counted("reps", was.Amount, now.Amount, words),
            AmountUnit.Metres => Counted("metres", was.Amount, now.Amount, words),
        };
        if (changed is not null)
            yield return changed;
        if (was.Effort == now.Effort)
            yield break;
        yield return now.Effort?.Match(
            steady => words.Say("change-effort", ("effort", words.Say("at-per-cent", ("percent", steady.Percent)))),
            ramp => words.Say("change-ramp", ("first", ramp.First), ("last", ramp.Last), ("n", ramp.Steps)),
            felt => words.Say("change-effort", ("effort", words.Say("felt-effort", ("rating", felt.Rating))))
        )
            ?? words.Say("change-no-effort");
    }

    private static IEnumerable<string> Terms(WeekDose before, WeekDose now, Limb limb, Texts texts)
    {
        var (old, dose, words) = (before.Dose, now.Dose, texts.Words);
        if (old.Sets > 1 && dose.Sets > 1 && Timed("change-rest", old.Rest, dose.Rest, words) is { } rest)
            yield return rest;
        if (Timed("change-pause", old.Pause, dose.Pause, words) is { } pause)
            yield return pause;
        if (old.Sides.TakeTurns && dose.Sides.TakeTurns && Timed("change-switch", before.Switch, now.Switch, words) is { } change)
            yield return change;
        if (MoreOf(old.Sides) != MoreOf(dose.Sides))
            yield return dose.Sides.MoreOnFirst is > 0 and var more
                ? words.Say(
                    "change-plus",
                    ("sets", words.Say("more-sets", ("n", more))),
                    ("side", SideWords.Of(dose.Sides.First, limb, words))
                )
                : words.Say("change-no-plus");
        if (OrderOf(old.Sides) != OrderOf(dose.Sides))
            yield return dose.Sides.Order == SideOrder.None
                ? words.Say("change-no-side")
                : words.Say("change-side", ("side", SideWords.Of(now, limb, texts)));
        if (old.Tempo != dose.Tempo)
            yield return dose.Tempo is { } tempo
                ? words.Say("change-tempo", ("tempo", DoseWords.Of(tempo, words)))
                : words.Say("change-no-tempo");
        if (old.Load != dose.Load)
            yield return dose.Load is { } load ? words.Say("with-load", ("load", load)) : words.Say("change-no-load");
        if (old.Leave != dose.Leave)
            yield return dose.Leave is { } leave ? words.Say("leave", ("n", leave)) : words.Say("change-no-leave");
    }

    private static (int, Side)? MoreOf(WorkedSides sides) => sides.MoreOnFirst > 0 ? (sides.MoreOnFirst, sides.First) : null;

    private static (SideOrder, Side?) OrderOf(WorkedSides sides) =>
        (sides.Order, sides.Order == SideOrder.One ? sides.First : null);

    private static bool SameShape(SettledDose one, SettledDose other) =>
        one.Parts.Count == other.Parts.Count
        && one.Parts.Zip(other.Parts)
            .All(p =>
                p.First.Actions.Count == p.Second.Actions.Count
                && p.First.Actions.Zip(p.Second.Actions).All(a => a.First.Verb == a.Second.Verb && a.First.Unit == a.Second.Unit)
            );

    private static string? Counted(string what, int before, int now, Words words) =>
        now == before ? null : words.Say($"change-{what}-{(now > before ? "more" : "fewer")}", ("n", Math.Abs(now - before)));

    private static string? Timed(string key, Seconds? before, Seconds? now, Words words) =>
        Timed(key, before?.Value ?? 0, now?.Value ?? 0, words);

    private static string? Timed(string key, int before, int now, Words words) =>
        now == before
            ? null
            : words.Say($"{key}-{(now > before ? "longer" : "shorter")}", ("time", words.Span(new(Math.Abs(now - before)))));
}
