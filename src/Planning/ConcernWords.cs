using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What exercises ask of somebody's health, and what this client answered → the list that stands once a page.</summary>
internal static class ConcernWords
{
    /// <summary>What was answered with yes first, then in the order in which the conditions are asked.</summary>
    public static Series<PlannedConcern> Of(Training training, Texts texts) =>
        training
            .Asked.Select(texts.Find)
            .OfType<Condition>()
            .Select(c => Of(c, training, texts))
            .OfType<PlannedConcern>()
            .OrderBy(c => c.Told.Count == 0)
            .ToSeries();

    /// <summary>The day the client was asked, and what to do if it is no longer so.</summary>
    public static string Asked(Series<PlannedConcern> concerns, Texts texts) =>
        texts.Words.Say(
            concerns.Any(c => c.Told.Count > 0) ? "asked-some-yes" : "asked-all-no",
            ("date", texts.Words.PlainDate(texts.Client.Answered)),
            ("coach", texts.Card.Coach)
        );

    /// <summary>What a clinician asked to be spared on some day of the programme.</summary>
    public static Series<PlannedNote> Restrictions(Texts texts)
    {
        var (words, programme) = (texts.Words, texts.Client.Programme);
        return texts
            .Client.Restrictions.Where(r => r.On <= programme.End && r.Until >= programme.Start)
            .OrderBy(r => r.On)
            .Select(r => new PlannedNote(words.Say("spare", ("place", PlaceOf(r))), Sentences(r).ToSeries()))
            .ToSeries();

        string PlaceOf(Restriction restriction)
        {
            string[] named =
            [
                .. restriction.Joint is { } joint
                    ? [HealthWords.Place(new(1, joint, restriction.Side), words)]
                    : Array.Empty<string>(),
                .. restriction.Movement is { } motion
                    ? [words.SayOr("motion-" + Kebab.OfWords(motion), motion)]
                    : Array.Empty<string>(),
            ];
            return named.Length == 0 ? words.Say("all-you-do") : words.Joined(named, "comma");
        }

        IEnumerable<string> Sentences(Restriction restriction)
        {
            yield return words.Say(
                "spare-asked",
                ("by", restriction.By),
                ("date", words.PlainDate(restriction.On)),
                ("until", words.PlainDate(restriction.Until))
            );
            string[] limits = [.. restriction.Limits.Select(l => HealthWords.Limit(l, words))];
            // What leads into a movement on the way to a start nobody can tell: more than is known is not promised.
            yield return limits.Length == 0
                ? words.Say(restriction.Movement is null ? "spare-left-out" : "spare-not-asked")
                : words.Say("spare-within", ("limits", words.Joined(limits, "comma")));
        }
    }

    /// <summary>How much pain is all right, by the practice's own bounds.</summary>
    public static PlannedNote PainRule(DayRules rules, Texts texts)
    {
        var (words, ease, stop) = (texts.Words, rules.EaseOffAbove, rules.StopAbove);
        return new(words.Say("pain-rule"), Sentences().ToSeries());

        IEnumerable<string> Sentences()
        {
            yield return words.Say("pain-rule-scale");
            yield return words.Say("pain-rule-go-on", ("n", ease));
            if (stop > ease)
                yield return words.Say("pain-rule-ease-off", ("above", ease), ("n", stop));
            yield return words.Say("pain-rule-stop", ("n", stop), ("coach", texts.Card.Coach));
            yield return words.Say("pain-rule-morning", ("coach", texts.Card.Coach));
        }
    }

    private static PlannedConcern? Of(Condition condition, Training training, Texts texts)
    {
        var (client, words) = (texts.Client, texts.Words);
        var yes = client.AnswerTo(condition.Id)?.Reply as Reply.Yes;
        var cleared = yes is null ? [] : Cleared(condition, client, words).ToArray();
        var side = yes?.Side is { } one ? words.Say(one.Word()) : "";
        var effects = new[]
        {
            Effect(
                side.Length > 0 ? "not-on-side" : "not-with",
                side,
                training.Exercises.Where(e => e.NotWith.Contains(condition.Id))
            ),
            cleared.Length > 0
                ? Effect("belongs-to", "", ClearFirst())
                : Effect(side.Length > 0 ? "not-on-side" : "clear-first", side, ClearFirst()),
        };
        var named = effects.Where(e => e.Exercises.Count > 0).ToSeries();
        return named.Count == 0 ? null : new(condition.Id, Sentence(condition.Name), Told().ToSeries(), named);

        IEnumerable<TrainedExercise> ClearFirst() => training.Exercises.Where(e => e.ClearFirst.Contains(condition.Id));

        IEnumerable<string> Told() =>
            yes is null ? [] : cleared.Prepend(words.Say("your-answer", ("reply", HealthWords.Reply(yes, words))));
    }

    private static PlannedEffect Effect(string phrase, string side, IEnumerable<TrainedExercise> exercises) =>
        new(phrase, side, exercises.Select(e => e.Id).ToSeries());

    /// <summary>Every clearance that holds on some day of the programme.</summary>
    private static IEnumerable<string> Cleared(Condition condition, Client client, Words words)
    {
        var programme = client.Programme;
        foreach (
            var clearance in client
                .Clearances.Where(c => c.Condition == condition.Id && c.On <= programme.End && c.Until >= programme.Start)
                .OrderBy(c => c.On)
        )
        {
            var until = words.PlainDate(clearance.Until);
            var span =
                clearance.On > programme.Start
                    ? words.Say("cleared-from-until", ("from", words.PlainDate(clearance.On)), ("until", until))
                    : words.Say("cleared-until", ("until", until));
            var limits = clearance.Limits.Select(l => HealthWords.Limit(l, words)).ToArray();
            yield return limits.Length == 0
                ? words.Say("is-cleared", ("span", span))
                : words.Say("is-cleared-within", ("span", span), ("limits", words.Joined(limits, "comma")));
        }
    }

    private static string Sentence(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
