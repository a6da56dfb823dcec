using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>A settled dose as a client reads it: "2 sets: hold 30 seconds. Rest 20 seconds between sets."</summary>
internal static class DoseWords
{
    /// <param name="cue">Where the working leg is; null where nobody says.</param>
    public static string Of(WeekDose week, Limb limb, SideCue? cue, Texts texts)
    {
        var (dose, words) = (week.Dose, texts.Words);
        var work = words.Joined([.. dose.Parts.Select(p => Of(p, words))], "then");
        var said = new List<string>
        {
            words.Say(
                week.InRounds ? "dose-work-in-rounds" : "dose-work",
                ("sets", words.Say("sets", ("n", dose.Sets))),
                ("work", work)
            ),
        };
        if (dose.Sides.Order != SideOrder.None)
        {
            var side = SideWords.Of(week, limb, cue, texts);
            said.Add(
                cue is not null && dose.Sides.Order == SideOrder.One
                    ? words.Say("sentence", ("words", side))
                    : words.Say("dose-side", ("side", side))
            );
        }

        if (dose.Sides.MoreOnFirst is > 0 and var more)
            said.Add(
                words.Say(
                    "dose-plus",
                    ("sets", words.Say("more-sets", ("n", more))),
                    ("side", SideWords.Of(dose.Sides.First, limb, words))
                )
            );
        if (dose.Rest is { } rest)
            said.Add(words.Say("dose-rest", ("time", words.Span(rest))));
        if (dose.Pause is { } pause)
            said.Add(words.Say("dose-pause", ("time", words.Span(pause))));
        if (dose.Switch is { } change)
            said.Add(words.Say("dose-switch", ("time", words.Span(change))));
        if (dose.Tempo is { } tempo)
            said.Add(words.Say("sentence", ("words", Of(tempo, words))));
        if (dose.Load is { } load)
            said.Add(words.Say("dose-load", ("load", load)));
        if (dose.Leave is { } leave)
            said.Add(words.Say("dose-leave", ("n", leave)));
        return string.Join(' ', said);
    }

    /// <summary>"lower for 3 seconds, wait 1, raise for 2, wait 1"; fast where a beat is.</summary>
    public static string Of(Tempo tempo, Words words)
    {
        return words.Say(
            "tempo",
            ("lower", Beat(tempo.Lower)),
            ("low", Beat(tempo.PauseLow)),
            ("raise", Beat(tempo.Raise)),
            ("high", Beat(tempo.PauseHigh))
        );

        string Beat(int? seconds) => seconds is { } beat ? words.Say("beat", ("n", beat)) : words.Say("fast");
    }

    private static string Of(SettledPart part, Words words)
    {
        var actions = words.Joined([.. part.Actions.Select(a => Of(a, words))], "then");
        return part.IsGroup
            ? words.Say("dose-rounds", ("times", words.Say("times", ("n", part.Times))), ("work", actions))
            : actions;
    }

    private static string Of(SettledAction action, Words words)
    {
        var amount = action.Unit switch
        {
            AmountUnit.Seconds => words.Span(new(action.Amount)),
            AmountUnit.Breaths => words.Say("breaths", ("n", action.Amount)),
            AmountUnit.Reps => words.Say("repetitions", ("n", action.Amount)),
            AmountUnit.Metres => words.Say("metres", ("n", action.Amount)),
        };
        var done = words.Say("do-" + action.Verb.ToString().ToLowerInvariant(), ("amount", amount));
        if (action.Times is { } times and > 1)
            done = words.Say("dose-times", ("times", words.Say("times", ("n", times))), ("work", done));
        return action.Effort?.Match(
            steady => words.Say("dose-effort", ("work", done), ("effort", words.Say("at-per-cent", ("percent", steady.Percent)))),
            ramp => words.Say("dose-ramp", ("work", done), ("first", ramp.First), ("last", ramp.Last), ("n", ramp.Steps)),
            felt => words.Say("dose-effort", ("work", done), ("effort", words.Say("felt-effort", ("rating", felt.Rating))))
        )
            ?? done;
    }
}
