using System.Globalization;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>One client and one exercise, as a physiotherapist meets them.</summary>
/// <param name="Why">What the clinician would say to it: the name of the case.</param>
/// <param name="Says">Answers that are no plain no.</param>
/// <param name="Does">The dose.</param>
/// <param name="Comes">What must come of it, in order: "nothing", a warning, an error of a rule, or what stands in the
/// way.</param>
internal sealed record ClinicCase(string Why, string Says, string Does, string Comes)
{
    private static readonly string[] Rules =
    [
        "agreement-missing",
        "answers-stale",
        "client-too-young",
        "effort-above-youth-limit",
        "need-unmeasured",
        "pain-where-loaded",
        "range-below-need",
    ];

    public string Position { get; init; } = "sitting";

    public string Trains { get; init; } = "knee flexion";

    public string Stage { get; init; } = "gain";

    /// <summary>Further lines of the exercise's header.</summary>
    public string More { get; init; } = "";

    public string Side { get; init; } = "each side";

    public string Born { get; init; } = "1990";

    /// <summary>"CONDITION FROM UNTIL", and a limit behind it.</summary>
    public string Cleared { get; init; } = "";

    /// <summary>Whether symptoms were named in answers.yaml on 20 November, when everything else was asked again.</summary>
    public bool NamesSymptomsLater { get; init; }

    public int FromWeek { get; init; } = 1;

    /// <summary>Lines of readings.csv: date, motion, side, mode, value.</summary>
    public string[] Readings { get; init; } = [];

    public string Judged()
    {
        var practice = Files().Read();
        var client = practice.Clients.Single();
        var findings = new Findings();
        findings.AddRange(RuleBook.Check(practice, Planned.Trainings(practice), new(2026, 12, 7)).ToSeries());
        var said = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var objection in Planned.Uses(practice, client).SelectMany(u => u.Against))
            said.Add(Say(objection));
        var stops = said.Count > 0;
        foreach (var finding in findings.Where(f => Rules.Contains(f.Rule.Text) && f.Level != Level.Note))
        {
            stops |= finding.Level == Level.Error;
            said.Add($"{(finding.Level == Level.Error ? "error" : "warning")} {finding.Rule}");
        }

        Assert.Equal(stops, findings.Block(client.Id, Reach.Of(practice)));
        return said.Count == 0 ? "nothing" : string.Join(" + ", said);
    }

    private LittlePractice Files()
    {
        var practice = Club
            .Empty.With(
                "conditions.yaml",
                string.Concat(
                    new[] { "ankle", "knee", "wrist", "shoulder", "foot", "calf", "hip" }.Select(r =>
                        $"- {{ id: sore-{r}, name: a sore {r}, question: Is a {r} sore?, where: {r}, sided: yes }}\n"
                    )
                ) + "- { id: calf-strain, name: a strain, question: Is there a strain?, where: whole body }\n"
            )
            .Exercise("drill", Does, More, Position, Trains)
            .Edit("exercises/drill.md", "stage: gain", "stage: " + Stage)
            .Member(
                "ansel",
                [
                    Side == ""
                        ? $"- use: drill\n  from-week: {FromWeek}"
                        : $"- use: drill\n  from-week: {FromWeek}\n  side: {Side}",
                ],
                weeks: FromWeek,
                answers: "{ calf-strain: no, "
                    + string.Concat(
                        new[] { "ankle", "knee", "wrist", "shoulder", "foot", "calf", "hip" }
                            .Where(r => !Says.Contains($"sore-{r}:", StringComparison.Ordinal))
                            .Select(r => $"sore-{r}: no, ")
                    )
                    + Says
                    + " }",
                clearances: Clearance()
            )
            .Edit("clients/ansel/client.yaml", "born: 1990", "born: " + Born);
        if (Born.CompareTo("2008") > 0)
            practice = practice.Edit(
                "clients/ansel/client.yaml",
                "training: 2026-11-02",
                "training: 2026-11-02, guardian: 2026-11-02"
            );
        if (NamesSymptomsLater)
            practice = practice
                .Edit("clients/ansel/answers.yaml", "answered: 2026-11-02", "answered: 2026-11-20")
                .Edit("clients/ansel/answers.yaml", "signs-or-symptoms: no", "signs-or-symptoms: yes");
        return Readings.Length == 0
            ? practice
            : practice.With(
                "clients/ansel/readings.csv",
                "date,motion,side,mode,value,unit,instrument\n" + string.Concat(Readings.Select(r => r + ",deg,goniometer\n"))
            );
    }

    private string Clearance()
    {
        if (Cleared == "")
            return "[]";
        var parts = Cleared.Split(' ', 4);
        var limit = parts.Length > 3 ? ", limit: " + parts[3] : "";
        return $"[{{ condition: {parts[0]}, by: a doctor, on: {parts[1]}, until: {parts[2]}{limit} }}]";
    }

    private static string Say(Objection objection) =>
        objection switch
        {
            Objection.Forbidden => $"forbidden {objection.Condition}",
            Objection.Loaded => $"loaded {objection.Condition}",
            Objection.Painful { IsTooMuch: true } pain => string.Create(CultureInfo.InvariantCulture, $"too painful {pain.Pain}"),
            Objection.Painful pain => string.Create(CultureInfo.InvariantCulture, $"painful {pain.Pain}"),
            Objection.CameBack => "came back",
            Objection.TooEarly => "too early",
            Objection.NotAsked => $"not asked {objection.Condition}",
            Objection.NotCleared => $"not cleared {objection.Condition}",
            Objection.ClearanceShort => $"short {objection.Condition}",
            Objection.BeyondLimit beyond => $"beyond {beyond.Limit.Words}",
            _ => throw new NotSupportedException($"{objection}"),
        };
}
