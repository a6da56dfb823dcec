using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>A settled dose as a client reads it: "2 sets: hold 30 seconds. Rest 20 seconds between sets."</summary>
internal static class DoseWords
{
    public static string Of(WeekDose week, Limb limb, Words words)
    {
        var (dose, role) = (week.Dose, week.Role);
        var work = words.Joined([.. dose.Parts.Select(p => Of(p, words))], "then");
        var said = new List<string>
        {
            words.Say(
                week.InRounds ? "dose-work-in-rounds" : "dose-work",
                ("sets", words.Say("sets", ("n", dose.Sets.Low))),
                ("work", work)
            ),
        };
        var terms = dose.Terms;
        if (terms.Side is not null)
            said.Add(words.Say("dose-side", ("side", SideWords.Of(dose, role, limb, words))));
        if (terms.Plus is { } plus)
            said.Add(
                words.Say(
                    "dose-plus",
                    ("sets", words.Say("more-sets", ("n", plus.Sets))),
                    ("side", SideWords.Of(Use.SidesOf(dose)[0], limb, words))
                )
            );
        if (terms.Rest is { } rest)
            said.Add(words.Say("dose-rest", ("time", words.Span(rest))));
        if (terms.Pause is { } pause)
            said.Add(words.Say("dose-pause", ("time", words.Span(pause))));
        if (terms.Switch is { } change)
            said.Add(words.Say("dose-switch", ("time", words.Span(change))));
        if (terms.Tempo is { } tempo)
            said.Add(words.Say("sentence", ("words", Of(tempo, words))));
        if (terms.Load is { } load)
            said.Add(words.Say("dose-load", ("load", load)));
        if (terms.Leave is { } leave)
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

    private static string Of(DosePart part, Words words)
    {
        var actions = words.Joined([.. part.Actions.Select(a => Of(a, words))], "then");
        return part is DosePart.Group group
            ? words.Say("dose-rounds", ("times", words.Say("times", ("n", group.Times.Low))), ("work", actions))
            : actions;
    }

    private static string Of(DoseAction action, Words words)
    {
        var amount = action.Amount switch
        {
            Amount.Span span => words.Span(new(span.Seconds.Low)),
            Amount.Breaths breaths => words.Say("breaths", ("n", breaths.Number.Low)),
            Amount.Reps reps => words.Say("repetitions", ("n", reps.Number.Low)),
            Amount.Metres metres => words.Say("metres", ("n", metres.Number.Low)),
            _ => throw new NotSupportedException(action.Amount.GetType().Name),
        };
        var done = words.Say("do-" + action.Verb.ToString().ToLowerInvariant(), ("amount", amount));
        if (action.Times is { Low: > 1 } times)
            done = words.Say("dose-times", ("times", words.Say("times", ("n", times.Low))), ("work", done));
        return action.Effort switch
        {
            Effort.Steady steady => words.Say(
                "dose-effort",
                ("work", done),
                ("effort", words.Say("at-per-cent", ("percent", steady.Percent.Low)))
            ),
            Effort.Ramp ramp => words.Say(
                "dose-ramp",
                ("work", done),
                ("first", ramp.First.Low),
                ("last", ramp.Last.Low),
                ("n", ramp.Steps)
            ),
            Effort.Felt felt => words.Say(
                "dose-effort",
                ("work", done),
                ("effort", words.Say("felt-effort", ("rating", felt.Rating)))
            ),
            _ => done,
        };
    }
}
