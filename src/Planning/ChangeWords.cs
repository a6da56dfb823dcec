using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What is other in a dose than in the one before, in few words.</summary>
internal static class ChangeWords
{
    /// <summary>"1 more set, +15 s a hold", held against the last week that was not lighter.</summary>
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
        var shaped = SameShape(old, dose);
        NumberChange[] numbers = [.. Numbers(old, dose, shaped)];
        if (!now.IsLighter && FellBack(numbers, shaped && IsHarder(old, dose)) is { } key)
        {
            foreach (var rise in numbers.Where(n => n.Now > n.Was))
                yield return rise.Said(words);
            foreach (var effort in Efforts(old, dose, words))
                yield return effort;
            yield return words.Say(key);
        }
        else
        {
            foreach (var number in numbers.Where(n => n.Now != n.Was))
                yield return number.Said(words);
            foreach (var effort in shaped ? Efforts(old, dose, words) : [words.Say("change-work")])
                yield return effort;
        }

        foreach (var change in Terms(before, now, limb, texts))
            yield return change;
    }

    /// <summary>One number of a dose, before and now.</summary>
    /// <param name="Thing">As it stands in the catalogue's key: "sets", or the verb for a number of seconds.</param>
    /// <param name="Turns">Whether it is a number of sets or times, over which an amount may fall back while work grows.</param>
    private readonly record struct NumberChange(string Thing, int Was, int Now, bool Turns = false, bool Timed = false)
    {
        public string Said(Words words) =>
            Timed
                ? words.Say($"change-{Thing}", ("time", Signed(Now - Was, words)))
                : words.Say($"change-{Thing}-{(Now > Was ? "more" : "fewer")}", ("n", Math.Abs(Now - Was)));
    }

    /// <summary>Every number of the work, the outermost first; of work of another kind only the sets.</summary>
    private static IEnumerable<NumberChange> Numbers(SettledDose old, SettledDose dose, bool shaped)
    {
        yield return new("sets", old.Sets, dose.Sets, Turns: true);
        foreach (var (was, part) in shaped ? old.Parts.Zip(dose.Parts) : [])
        {
            yield return new("rounds", was.Times, part.Times, Turns: true);
            foreach (var (before, now) in was.Actions.Zip(part.Actions))
            {
                yield return new("times", before.Times ?? 1, now.Times ?? 1, Turns: true);
                yield return now.Unit switch
                {
                    AmountUnit.Seconds => new(now.Verb.Word(), before.Amount, now.Amount, Timed: true),
                    AmountUnit.Breaths => new("breaths", before.Amount, now.Amount),
                    AmountUnit.Reps => new("reps", before.Amount, now.Amount),
                    AmountUnit.Metres => new("metres", before.Amount, now.Amount),
                };
            }
        }
    }

    /// <summary>How it is said that numbers fell so that another could rise, the way a dose with ranges grows; null where it is
    /// not so, and each number is told.</summary>
    private static string? FellBack(NumberChange[] numbers, bool harder)
    {
        NumberChange[] falls = [.. numbers.Where(n => n.Now < n.Was)],
            rises = [.. numbers.Where(n => n.Now > n.Was)];
        if (falls.Length == 0 || (rises.Length == 0 && !harder) || !rises.All(n => n.Turns))
            return null;
        if (!falls.All(n => n.Timed))
            return "change-less-each";
        return falls.All(n => 3 * n.Now >= 2 * n.Was) ? "change-bit-shorter" : "change-shorter";
    }

    private static bool IsHarder(SettledDose old, SettledDose dose) =>
        old
            .Parts.Zip(dose.Parts)
            .SelectMany(p => p.First.Actions.Zip(p.Second.Actions))
            .Any(a => a is { First.Effort: { } was, Second.Effort: { } now } && Height(now) > Height(was));

    /// <summary>Comparable among efforts of one kind.</summary>
    private static int Height(SettledEffort effort) =>
        effort.Match(steady => steady.Percent, ramp => ramp.First + ramp.Last, felt => felt.Rating);

    private static IEnumerable<string> Efforts(SettledDose old, SettledDose dose, Words words) =>
        from pair in old.Parts.Zip(dose.Parts)
        from action in pair.First.Actions.Zip(pair.Second.Actions)
        where action.First.Effort != action.Second.Effort
        select action.Second.Effort?.Match(
            steady => words.Say("change-effort", ("effort", words.Say("at-per-cent", ("percent", steady.Percent)))),
            ramp => words.Say("change-ramp", ("first", ramp.First), ("last", ramp.Last), ("n", ramp.Steps)),
            felt => words.Say("change-effort", ("effort", words.Say("felt-effort", ("rating", felt.Rating))))
        )
            ?? words.Say("change-no-effort");

    private static IEnumerable<string> Terms(WeekDose before, WeekDose now, Limb limb, Texts texts)
    {
        var (old, dose, words) = (before.Dose, now.Dose, texts.Words);
        if (old.Sets > 1 && dose.Sets > 1 && Timed("rest", old.Rest, dose.Rest, words) is { } rest)
            yield return rest;
        if (Timed("pause", old.Pause, dose.Pause, words) is { } pause)
            yield return pause;
        if (old.Sides.TakeTurns && dose.Sides.TakeTurns && Timed("switch", before.Switch, now.Switch, words) is { } change)
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
                : words.Say("change-side", ("side", SideWords.Of(now, limb, null, texts)));
        if (old.Tempo != dose.Tempo)
            yield return dose.Tempo is { } tempo
                ? words.Say("change-tempo", ("tempo", TempoWords.Of(tempo, words)))
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

    private static string? Timed(string thing, Seconds? before, Seconds? now, Words words)
    {
        var change = new NumberChange(thing, before?.Value ?? 0, now?.Value ?? 0, Timed: true);
        return change.Now == change.Was ? null : change.Said(words);
    }

    private static string Signed(int seconds, Words words) =>
        (seconds > 0 ? "+" : "\u2212") + words.ShortSpan(new(Math.Abs(seconds)));
}
