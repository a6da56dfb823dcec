using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>The decision before training, in every combination, against the printed rows: Riebe D et al. 2015, Med Sci Sports
/// Exerc 47:2473-9 (second-hand for the rows).</summary>
public sealed class PreParticipationTests(ITestOutputHelper output)
{
    /// <summary>Regularly active; known heart, metabolic or kidney disease; signs or symptoms; clearance.</summary>
    private static readonly (string Active, string Disease, string Symptoms, string Clearance)[] Printed =
    [
        ("no", "no", "no", "not needed"),
        ("no", "yes", "no", "recommended"),
        ("no", "any", "yes", "recommended"),
        ("yes", "no", "no", "not needed"),
        ("yes", "yes", "no", "not for moderate; recommended before vigorous (within 12 months)"),
        ("yes", "any", "yes", "stop, and seek clearance"),
    ];

    public static TheoryData<bool, bool, bool> Combinations
    {
        get
        {
            var all = new TheoryData<bool, bool, bool>();
            foreach (var active in new[] { true, false })
            foreach (var disease in new[] { true, false })
            foreach (var symptoms in new[] { true, false })
                all.Add(active, disease, symptoms);
            return all;
        }
    }

    [Theory, MemberData(nameof(Combinations))]
    public void Every_combination_is_one_printed_row(bool active, bool disease, bool symptoms)
    {
        var row = Assert.Single(Printed, r => Fits(r.Active, active) && Fits(r.Disease, disease) && Fits(r.Symptoms, symptoms));
        Assert.Equal(
            row.Clearance,
            PreParticipation.Of(active, disease, symptoms) switch
            {
                ClearanceNeed.None => "not needed",
                ClearanceNeed.BeforeTraining => "recommended",
                ClearanceNeed.BeforeVigorous => "not for moderate; recommended before vigorous (within 12 months)",
                ClearanceNeed.StopUntilCleared => "stop, and seek clearance",
                _ => throw new NotSupportedException(),
            }
        );
    }

    /// <summary>What comes of it for a client, by what was answered, how hard the work is, and which clearance there is. Where
    /// the table recommends one, nothing is handed over without.</summary>
    [Theory]
    [InlineData("no", "no", "no", "50%", "", "")]
    [InlineData("yes", "no", "no", "80%", "", "")]
    [InlineData("no", "yes", "no", "50%", "", "a clinician's clearance comes before any training")]
    [InlineData("no", "yes", "no", "50%", "heart-disease 2026-12-01 2028-01-01", "")]
    [InlineData(
        "no",
        "yes",
        "no",
        "50%",
        "signs-or-symptoms 2026-12-01 2028-01-01",
        "a clinician's clearance comes before any training"
    )]
    [InlineData("no", "no", "yes", "50%", "", "a clinician's clearance comes before any training")]
    [InlineData(
        "no",
        "yes",
        "yes",
        "50%",
        "signs-or-symptoms 2026-12-01 2028-01-01",
        "a clinician's clearance comes before any training"
    )]
    [InlineData("yes", "yes", "no", "69%", "", "")]
    [InlineData("yes", "yes", "no", "70%", "", "is hard work")]
    [InlineData("yes", "yes", "no", "effort 6", "", "")]
    [InlineData("yes", "yes", "no", "effort 7", "", "is hard work")]
    [InlineData("yes", "yes", "no", "", "", "is hard work")]
    [InlineData("yes", "yes", "no", "80%", "heart-disease 2026-01-31 2028-01-01", "")]
    [InlineData("yes", "yes", "no", "80%", "heart-disease 2026-01-30 2028-01-01", "not older than 12 months")]
    [InlineData("yes", "yes", "no", "50%", "heart-disease 2026-01-30 2028-01-01", "")]
    [InlineData("yes", "no", "yes", "50%", "", "all training stops until a clinician has cleared it")]
    [InlineData("yes", "no", "yes", "80%", "signs-or-symptoms 2026-12-01 2028-01-01", "")]
    [InlineData("yes", "yes", "yes", "50%", "", "all training stops until a clinician has cleared it")]
    [InlineData("yes", "yes", "yes", "50%", "signs-or-symptoms 2026-12-01 2028-01-01", "")]
    public void A_client_waits_for_what_the_row_asks(
        string active,
        string disease,
        string symptoms,
        string effort,
        string clearance,
        string said
    )
    {
        var messages = Findings(active, disease, symptoms, effort, clearance);
        if (said.Length == 0)
            Assert.Empty(messages);
        else
            Assert.Contains(messages, m => m.Contains(said, StringComparison.Ordinal));
    }

    /// <summary>Yes, no and not asked, three questions: whatever is not asked blocks, whatever else was answered.</summary>
    [Fact]
    public void What_was_not_asked_blocks_in_all_twenty_seven()
    {
        string[] answers = ["yes", "no", "not asked"];
        var blocked = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var active in answers)
        foreach (var disease in answers)
        foreach (var symptoms in answers)
        {
            var missing = new[] { active, disease, symptoms }.Count(a => a == "not asked");
            var found = Findings(active, disease, symptoms, "50%", "")
                .Count(m => m.Contains("has not been asked", StringComparison.Ordinal));
            Assert.Equal(missing, found);
            blocked[missing > 0 ? "not asked" : "asked"] = blocked.GetValueOrDefault(missing > 0 ? "not asked" : "asked") + 1;
        }

        output.WriteLine(string.Join(", ", blocked.Select(b => $"{b.Key}: {b.Value}")));
        Assert.Equal((8, 19), (blocked["asked"], blocked["not asked"]));
    }

    /// <summary>Four weeks from 4 January 2027, so until Sunday 31 January.</summary>
    private static string[] Findings(string active, string disease, string symptoms, string effort, string clearance)
    {
        var (condition, on, until) = clearance.Split(' ') is [var c, var first, var last] ? (c, first, last) : ("", "", "");
        var dose = $"2 x press 8 s{(effort.Length > 0 ? " at " + effort : "")}, each side";
        var practice = Club
            .Empty.Exercise("sway", dose)
            .Member(
                "ansel",
                ["- use: sway"],
                weeks: 4,
                answers: $"{{ calf-strain: no, regularly-active: {active}, heart-disease: {disease}, "
                    + $"signs-or-symptoms: {symptoms} }}",
                clearances: condition.Length == 0
                    ? "[]"
                    : $"[{{ condition: {condition}, by: a doctor, on: {on}, until: {until} }}]"
            )
            .Read();
        return
        [
            .. RuleBook
                .Check(practice, Planned.Trainings(practice), new(2026, 12, 7))
                .Where(f => f.Level == Level.Error)
                .Select(f => f.Message),
        ];
    }

    private static bool Fits(string printed, bool answered) => printed == "any" || printed == (answered ? "yes" : "no");
}
