using System.Collections.Concurrent;
using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>How the cases lie over the kinds: each kind of answer, side, limit, expiry and outcome must be there.</summary>
internal sealed class ProofSpread
{
    private static readonly string[] Needed =
    [
        "outcome: published",
        "outcome: blocked",
        "answer: no",
        "answer: yes",
        "answer: yes, left",
        "answer: yes, right",
        "answer: not asked",
        "answer: missing",
        "answer: pain",
        "side: left",
        "side: right",
        "side: rear leg",
        "side: each side",
        "side: none",
        "plays: left",
        "plays: right",
        "limit: effort",
        "limit: hold",
        "limit: bending",
        "limit: prone",
        "limit: none",
        "limit: two",
        "clearance: whole programme",
        "clearance: begins late",
        "clearance: ends early",
        "clearance: two",
        "clearance: older than a year at the end",
        "weeks: by line",
        "weeks: version",
        "weeks: the same",
        "session: alternate",
        "position: hands-and-knees",
        "position: prone",
        "position: hanging",
        "loads: not written",
        "loads: other side",
        "age: under 18 with guardian",
        "age: under 18 without",
        "age: grown",
        "age: below the youngest",
        "age: 65 and older",
        "stage: prepare",
        "stage: gain",
        "stage: strengthen",
        "stage: control",
        "stage: load",
        "position: split-stance",
        "position: half-kneeling",
        "position: squat",
        "property: sits-on-heels",
        "property: worn-load",
        "property: mid-range",
        "property: weight-on-hands",
        "property: head-low",
        "verb: carry",
        "verb: breathe",
        "dose: a load",
        .. new[] { "head", "groin", "thigh", "calf", "ribs", "belly", "chest", "neck", "lower-back", "whole body" }.Select(p =>
            "pain: " + p
        ),
        "pain: above stop",
        "pain: above ease off",
        .. FloorAnswers.Ids.Where(id => id != "pain-now").Select(id => "yes: " + id),
        "clearance: symptoms, before the answers",
        "clearance: symptoms, since the answers",
        .. new[]
        {
            "forbidden",
            "loaded",
            "painful too much",
            "painful on the place",
            "too early",
            "client-too-young",
            "not asked",
            "not cleared",
            "short",
            "beyond",
            "agreement-missing",
            "effort-above-youth-limit",
            "answers-stale",
            "edition-outlives-clearance",
            "back stale",
            "back clinician",
        }.Select(k => "against: " + k),
        "published: a clearance is used",
        "published: a yes on the other side",
        "published: disease and active",
        "published: not active",
        "published: a jump from 65 on, cleared",
        "published: symptoms cleared",
        "published: pain above ease off elsewhere",
        "published: a held load",
        "published: pain that is trained with",
        "trait: properties",
        "trait: stages",
        "trait: positions",
        "trait: loads",
        "log: a sign",
        "log: after the answers",
        "published: a sign of the log, cleared",
        "published: with a log",
    ];

    private readonly ConcurrentDictionary<string, int> counts = new(StringComparer.Ordinal);
    private int cases;

    public ConcurrentBag<string> Differences { get; } = [];

    public int Cases => cases;

    public void Take(ProofCase judged)
    {
        Interlocked.Increment(ref cases);
        if (judged.Difference is { } difference)
            Differences.Add(difference);
        foreach (var kind in Kinds(judged).Distinct(StringComparer.Ordinal))
            counts.AddOrUpdate(kind, 1, (_, n) => n + 1);
    }

    public IEnumerable<string> Missing() => Needed.Where(kind => !counts.ContainsKey(kind));

    public string Table() =>
        string.Join(
            '\n',
            Needed
                .Select(kind => string.Create(CultureInfo.InvariantCulture, $"{counts.GetValueOrDefault(kind), 8}  {kind}"))
                .Prepend(string.Create(CultureInfo.InvariantCulture, $"{cases} cases, {Differences.Count} differences"))
        );

    private static IEnumerable<string> Kinds(ProofCase judged)
    {
        var client = judged.Client;
        var uses = client.Sessions.SelectMany(s => s.Uses).ToArray();
        var exercises = judged.Library.Exercises.Where(e => uses.Any(u => u.Exercise == e.Id)).ToArray();
        yield return judged.IsBlocked ? "outcome: blocked" : "outcome: published";
        foreach (var (id, answer) in client.Answers)
        {
            yield return $"answer: {(id == "pain-now" && answer != "0" ? "pain" : answer)}";
            if (answer == "yes")
                yield return "yes: " + id;
        }

        foreach (var pain in SecondPain.Of(client))
        {
            yield return "pain: " + pain.Place;
            yield return pain.Level > 5 ? "pain: above stop"
            : pain.Level > 2 ? "pain: above ease off"
            : "pain: little";
        }

        if (FloorAnswers.Ids.Any(id => !client.Answers.ContainsKey(id)))
            yield return "answer: missing";
        foreach (var use in uses)
            yield return $"side: {use.Side ?? "none"}";
        yield return "plays: " + client.Plays;
        foreach (var kind in client.Clearances.SelectMany(c => Clearance(client, c)))
            yield return kind;
        if (client.Clearances.GroupBy(c => c.Condition).Any(g => g.Count() > 1))
            yield return "clearance: two";
        foreach (var use in uses)
            yield return use.Weeks.Length == 0 ? "weeks: the same"
            : use.Weeks.Any(w => w.Version is not null) ? "weeks: version"
            : "weeks: by line";
        if (client.Sessions.Any(s => s.IsAlternate))
            yield return "session: alternate";
        foreach (var exercise in exercises)
        {
            yield return "position: " + exercise.Position;
            yield return "stage: " + exercise.Stage;
            yield return "verb: " + exercise.Dose.Verb;
            if (exercise.Dose.NamesLoad)
                yield return "dose: a load";
            foreach (var property in exercise.Properties)
                yield return "property: " + property;
            yield return exercise.Loads is null ? "loads: not written"
            : exercise.Loads.Any(l => l.StartsWith("other", StringComparison.Ordinal)) ? "loads: other side"
            : "loads: written";
        }

        if (client.BornAtLast(ProofSlip.None).AddYears(13) > client.Start)
            yield return "age: below the youngest";
        if (client.AnswerTo(SecondFloor.From65, ProofSlip.None) == "yes")
            yield return "age: 65 and older";
        yield return client.Born.CompareTo("2009") < 0 ? "age: grown"
        : client.Guardian is null ? "age: under 18 without"
        : "age: under 18 with guardian";
        foreach (var line in judged.Second)
            yield return "against: " + Against(line);
        foreach (var trait in SecondJudgement.ByTraits(judged.Library, client))
            yield return "trait: " + trait.Key;
        if (SecondReturned.SignCounts(client, ProofSlip.None))
            yield return "log: a sign";
        if (client.Log.Any(e => e.Day >= client.Answered))
            yield return "log: after the answers";
        if (judged.IsBlocked)
            yield break;
        if (client.Log.Length > 0)
            yield return "published: with a log";
        if (SecondReturned.SignCounts(client, ProofSlip.None))
            yield return "published: a sign of the log, cleared";
        if (client.Clearances.Length > 0)
            yield return "published: a clearance is used";
        if (client.Answers.Any(a => a.Value.StartsWith("yes, ", StringComparison.Ordinal)))
            yield return "published: a yes on the other side";
        if (SecondFloor.Diseases.Any(d => client.Answers[d] == "yes") && client.Answers["regularly-active"] == "yes")
            yield return "published: disease and active";
        if (client.Answers["regularly-active"] == "no")
            yield return "published: not active";
        if (client.AnswerTo("signs-or-symptoms", ProofSlip.None) == "yes")
            yield return "published: symptoms cleared";
        if (client.AnswerTo(SecondFloor.From65, ProofSlip.None) == "yes" && exercises.Any(e => e.Properties.Contains("jumping")))
            yield return "published: a jump from 65 on, cleared";
        if (exercises.Any(e => e.Dose.NamesLoad && !e.Properties.Contains("worn-load")))
            yield return "published: a held load";
        if (SecondPain.Of(client).Any(p => p.Level > 2))
            yield return "published: pain above ease off elsewhere";
        if (client.Answers["pain-now"] != "0")
            yield return "published: pain that is trained with";
    }

    private static IEnumerable<string> Clearance(MadeClient client, MadeClearance clearance)
    {
        var end = client.Start.AddDays((7 * client.Weeks) - 1);
        yield return clearance.On > client.Start ? "clearance: begins late"
        : clearance.Until < end ? "clearance: ends early"
        : "clearance: whole programme";
        if (clearance.On.AddYears(1) < end)
            yield return "clearance: older than a year at the end";
        if (clearance.Condition == "signs-or-symptoms")
            yield return clearance.On < client.Answered
                ? "clearance: symptoms, before the answers"
                : "clearance: symptoms, since the answers";
        yield return clearance.Limits.Length switch
        {
            0 => "limit: none",
            1 => "limit: one",
            _ => "limit: two",
        };
        foreach (var limit in clearance.Limits)
            yield return "limit: "
                + (
                    limit[0] == 'e' ? "effort"
                    : limit[0] == 'h' ? "hold"
                    : limit.StartsWith("no ", StringComparison.Ordinal) ? "bending"
                    : "prone"
                );
    }

    /// <summary>The kind behind the colon, without what it is about.</summary>
    private static string Against(string line)
    {
        var kind = line[(line.IndexOf(": ", StringComparison.Ordinal) + 2)..];
        return kind.StartsWith("painful ", StringComparison.Ordinal)
            ? kind.EndsWith(" too much", StringComparison.Ordinal)
                ? "painful too much"
                : "painful on the place"
            : kind.StartsWith("not ", StringComparison.Ordinal)
            || kind.StartsWith("back ", StringComparison.Ordinal)
            || kind == "too early"
                ? kind
                : kind.Split(' ')[0];
    }
}
