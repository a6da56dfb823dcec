using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>The files that a practice may have beside the usual ones.</summary>
public sealed class OtherFilesTests
{
    private const string Header = "date,motion,side,mode,value,unit,instrument\n";
    private const string Readings = "clients/ansel/readings.csv";

    /// <summary>Norkin and White, Measurement of Joint Motion, Table A.1; Powden CJ 2015, Man Ther, doi
    /// 10.1016/j.math.2015.01.004.</summary>
    [Fact]
    public void The_motions_that_come_with_Gradus_carry_published_values_with_their_source()
    {
        var motions = LittlePractice.Golden.Read().Measures.ToDictionary(m => m.Motion.Name);
        Assert.Equal(["AAOS 90", "AMA 60"], motions["shoulder external rotation"].References.Select(r => $"{r.Set} {r.Value}"));
        Assert.Equal([4.7m, 4.6m], motions["lunge ankle dorsiflexion"].Errors.Take(2).Select(e => e.Value));
        Assert.Empty(motions["ankle dorsiflexion"].Errors);

        // 38 CFR 4.71a prints the sums itself: cervical 340, thoracolumbar 240 (side-bending and rotation to both sides).
        decimal Sum(string spine) =>
            motions
                .Values.Where(m => m.Motion.Name.StartsWith(spine, StringComparison.Ordinal))
                .SelectMany(m => m.References.Select(r => r.Value * (m.Motion.IsPaired ? 2 : 1)))
                .Sum();
        Assert.Equal(340, Sum("cervical"));
        Assert.Equal(240, Sum("thoracolumbar"));
        Assert.All(motions.Values.SelectMany(m => m.References.Select(r => r.Mark).Concat(m.Errors.Select(e => e.Mark))), mark =>
            Assert.Contains(mark, new[] { "seen", "second-hand", "computed" })
        );
    }

    [Fact]
    public void A_motion_of_the_practice_adds_to_them_or_replaces_one()
    {
        var practice = LittlePractice
            .Golden.With(
                "motions.yaml",
                "- { id: breathing, name: breathing, unit: none }\n- { id: hip-flexion, name: hip flexion, unit: deg, "
                    + "error: 6, reference: 118, how: lying down }\n"
            )
            .Read();
        var breathing = practice.Measures.Single(m => m.Motion.Name == "breathing").Motion;
        Assert.Equal((false, MotionUnit.None), (breathing.IsPaired, breathing.Unit));
        var hip = practice.Measures.Single(m => m.Motion.Name == "hip flexion");
        Assert.Equal(
            (Limb.Leg, 6m, 118m, "the practice's own"),
            (hip.Motion.Limb, hip.Errors[0].Value, hip.References[0].Value, hip.References[0].Source)
        );
    }

    [Fact]
    public void Readings_are_bound_with_their_places()
    {
        var client = LittlePractice
            .Golden.With(Readings, Header + "2026-11-20,lying ankle dorsiflexion,right,passive,11.5,deg,\"inclinometer, long\"\n")
            .Read()
            .Clients.Single(c => c.Id.Text == "ansel");
        var reading = Assert.Single(client.Readings);
        Assert.Equal(
            (new DateOnly(2026, 11, 20), Side.Right, RangeMode.Passive, 11.5m, "inclinometer, long"),
            (reading.Date, reading.Side, reading.Mode, reading.Value, reading.Instrument)
        );
        Assert.Equal(new Location(Readings, 2, 1), reading.At);
    }

    [Theory]
    [InlineData(
        "2026-11-31,lying ankle dorsiflexion,right,passive,11,deg,tape",
        1,
        "There is no day 2026-11-31 in the calendar."
    )]
    [InlineData(
        "2206-11-20,lying ankle dorsiflexion,right,passive,11,deg,tape",
        1,
        "2206-11-20 lies outside the years 1900 to 2199."
    )]
    [InlineData(
        "2026-11-20,ankle dorsiflexon,right,passive,11,deg,tape",
        12,
        "There is no motion 'ankle dorsiflexon' in this practice."
    )]
    [InlineData("2026-11-20,lying ankle dorsiflexion,rigth,passive,11,deg,tape", 37, "'rigth' cannot stand here.")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,,passive,11,deg,tape", 37, "A word is missing here.")]
    [InlineData("2026-11-20,cervical flexion,left,active,11,deg,tape", 29, "'cervical flexion' has no left and right.")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,right,resting,11,deg,tape", 43, "'resting' cannot stand here.")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,right,passive,011,deg,tape", 51, "'011' is no number.")]
    [InlineData(
        "2026-11-20,lying ankle dorsiflexion,right,passive,11,cm,tape",
        54,
        "'lying ankle dorsiflexion' is measured in deg, but here is 'cm'."
    )]
    [InlineData("2026-11-20,lying ankle dorsiflexion,right,passive,11,deg,", 58, "The instrument is missing.")]
    [InlineData("2026-11-20;ankle dorsiflexion;right", 1, "This line has 1 columns; a reading has 7.")]
    public void A_wrong_reading_is_said_with_its_place(string line, int column, string message)
    {
        var finding = Assert.Single(LittlePractice.Golden.With(Readings, Header + line + "\n").Findings());
        Assert.Equal((2, column, message), (finding.At.Line, finding.At.Column, finding.Message));
        Assert.NotEqual("", finding.Help);
    }

    [Fact]
    public void Accepted_warnings_a_glossary_and_own_words_are_bound()
    {
        var practice = LittlePractice
            .Golden.With(
                "accepted.yaml",
                "- { rule: equipment-missing, file: clients/ansel/programme.md, because: He borrows the wall., by: The "
                    + "coach, until: 2027-03-01 }\n"
            )
            .With("glossary.yaml", "end range: As far as a joint goes.\n")
            .With("words/en.yaml", "kind-stop: Stop now\n")
            .Read();
        var accepted = Assert.Single(practice.Accepted);
        Assert.Equal(("equipment-missing", new DateOnly(2027, 3, 1)), (accepted.Rule.Text, accepted.Until));
        Assert.Equal("As far as a joint goes.", Assert.Single(practice.Glossary).Explanation);
        Assert.Equal("Stop now", practice.Words.In("en")?.Say("kind-stop"));
    }

    [Theory]
    [InlineData("kind-stp: Stop now\n", "'kind-stp' is no word of a site.", "Did you mean 'kind-stop'?")]
    [InlineData(
        "step-hold: Hold it\n",
        "'step-hold' must hold the same words in braces as before: '{letter} hold'.",
        "Keep every word in braces; only the text around them can change."
    )]
    public void A_wrong_word_is_refused(string words, string message, string help)
    {
        var finding = Assert.Single(LittlePractice.Golden.With("words/en.yaml", words).Findings());
        Assert.Equal((message, help), (finding.Message, finding.Help));
    }

    [Fact]
    public void A_translation_is_no_second_id()
    {
        var practice = LittlePractice
            .Golden.With("exercises/calf-brace.de.md", "---\ntitle: Wade\n---\n## Do\n1. Drücke {press}.\n")
            .Read();
        var translation = Assert.IsType<Translation.OfExercise>(Assert.Single(practice.Translations));
        Assert.Equal(("calf-brace", "de", "Wade"), (translation.Exercise.Text, translation.Language, translation.Title));
        Assert.Equal(["Drücke {press}."], translation.Text.Do.Lines());
        var lost = Assert.Single(LittlePractice.Golden.With("exercises/calf-brce.de.md", "---\ntitle: Wade\n---\n").Findings());
        Assert.Equal(("file-name-wrong", "Did you mean 'calf-brace'?"), (lost.Rule.Text, lost.Help));
    }

    [Fact]
    public void A_link_out_of_the_practice_is_said_and_not_followed()
    {
        var folder = Directory.CreateTempSubdirectory("gradus-links-").FullName;
        try
        {
            foreach (var (path, bytes) in LittlePractice.Golden.Files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, path)) ?? folder);
                File.WriteAllBytes(Path.Combine(folder, path), bytes);
            }

            File.CreateSymbolicLink(Path.Combine(folder, "exercises", "elsewhere.md"), "/etc/hostname");
            Directory.CreateSymbolicLink(Path.Combine(folder, "clients", "elsewhere"), "/etc");
            var findings = new Findings();
            Assert.NotNull(PracticeReader.Read(SourceFolder.Open(folder), findings).Practice);
            Assert.Equal(["clients/elsewhere", "exercises/elsewhere.md"], findings.Select(f => f.At.File));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
