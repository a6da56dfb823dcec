using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>The doses of a use → what they count, a row for each thing, so that the eye runs along the weeks.</summary>
internal static class DoseRows
{
    /// <summary>In the order in which the first dose names them. Sets are left out where there is never more than one.</summary>
    public static IEnumerable<PlannedRow> Of(Use use, Limb limb, SideCue? cue, Texts texts)
    {
        var words = texts.Words;
        var said = use
            .Weeks.SelectMany(w => Numbered(Of(w, limb, cue, texts)).Select(row => (row.What, row.Nth, w.Week, row.Said)))
            .ToArray();
        var (sets, one, side) = (words.Say("row-sets"), words.Number(new(1)), words.Say("row-side"));
        foreach (var row in said.GroupBy(s => (s.What, s.Nth)))
        {
            var everySaid = row.Select(s => s.Said).Distinct(StringComparer.Ordinal).ToArray();

            // A side that is always the same stands at the exercise.
            var needsNoRow = everySaid is [var same] && (row.Key.What == side || (row.Key.What == sets && same == one));
            if (!needsNoRow)
                yield return new(row.Key.What, SaidInWeeks.Of(row.Select(s => (s.Week, s.Said))));
        }
    }

    /// <summary>Two presses of one dose are two rows.</summary>
    private static IEnumerable<(string What, int Nth, string Said)> Numbered(IEnumerable<(string What, string Said)> rows) =>
        rows.GroupBy(r => r.What).SelectMany(same => same.Select((r, i) => (r.What, Nth: i, r.Said)));

    private static IEnumerable<(string What, string Said)> Of(WeekDose week, Limb limb, SideCue? cue, Texts texts)
    {
        var (dose, words) = (week.Dose, texts.Words);
        yield return Row("sets", words.Number(new(dose.Sets)));
        if (dose.Sides.MoreOnFirst is > 0 and var more)
            yield return (
                words.Say("row-more", ("side", SideWords.Of(dose.Sides.First, limb, words))),
                words.Number(new(dose.Sets + more))
            );
        foreach (var part in dose.Parts)
        {
            if (part.IsGroup)
                yield return Row("times", words.Number(new(part.Times)));
            foreach (var action in part.Actions)
                yield return (WhatOf(action, words), Amount(action, words));
        }

        var efforts = dose.Actions.Select(a => a.Effort).OfType<SettledEffort>().Distinct().ToArray();
        foreach (var action in dose.Actions.Where(a => a.Effort is not null).Take(efforts.Length == 1 ? 1 : int.MaxValue))
            yield return (
                efforts.Length == 1 ? words.Say("row-effort") : words.Say("row-effort-of", ("what", WhatOf(action, words))),
                EffortOf(action, words)
            );
        foreach (var row in Terms(dose, words))
            yield return row;
        if (SideWords.Of(week, limb, cue, texts) is { Length: > 0 } side)
            yield return Row("side", side);
        yield return Row("takes", Words.HalfMinutes(week.Measures.Seconds));

        (string, string) Row(string key, string said) => (words.Say("row-" + key), said);
    }

    private static IEnumerable<(string What, string Said)> Terms(SettledDose dose, Words words)
    {
        if (dose.Load is { } load)
            yield return (words.Say("row-load"), load);
        if (dose.Tempo is { } tempo)
            yield return (words.Say("row-tempo"), TempoWords.Of(tempo, words));
        if (dose.Leave is { } leave)
            yield return (words.Say("row-leave"), words.Number(new(leave)));
        if (dose.Pause is { } pause)
            yield return (words.Say("row-pause"), Narrow(pause.Value, words));
        if (dose.Rest is { } rest)
            yield return (words.Say("row-rest"), Narrow(rest.Value, words));
        if (dose.Switch is { } change)
            yield return (words.Say("row-switch"), Narrow(change.Value, words));
    }

    private static string WhatOf(SettledAction action, Words words)
    {
        var verb = words.Say("row-" + action.Verb.Word());
        return action.Unit switch
        {
            AmountUnit.Breaths => words.Say("row-breaths", ("what", verb)),
            AmountUnit.Reps => words.Say("row-repetitions", ("what", verb)),
            AmountUnit.Seconds or AmountUnit.Metres => verb,
        };
    }

    private static string Amount(SettledAction action, Words words)
    {
        var once = action.Unit switch
        {
            AmountUnit.Seconds => Narrow(action.Amount, words),
            AmountUnit.Metres => words.Say("short-metres", ("n", action.Amount)),
            AmountUnit.Breaths or AmountUnit.Reps => action.Amount.ToString(CultureInfo.InvariantCulture),
        };
        return action.Times is { } times ? words.Say("times-amount", ("times", times), ("amount", once)) : once;
    }

    /// <summary>A column of a week is as wide as "150 s".</summary>
    private static string Narrow(int seconds, Words words) =>
        seconds < 180 ? words.Say("short-seconds", ("n", seconds)) : words.ShortSpan(new(seconds));

    private static string EffortOf(SettledAction action, Words words) =>
        action.Effort?.Match(
            steady => words.Say("short-per-cent", ("n", steady.Percent)),
            ramp => words.Say("short-ramp", ("first", ramp.First), ("last", ramp.Last)),
            felt => words.Say("out-of-ten", ("n", felt.Rating))
        )
        ?? "";
}
