using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

public sealed class CautionReaderTests
{
    [Theory]
    [InlineData("calf-pull", CautionKind.Expect, "A broad pull in the calf", "That is the stretch.")]
    [InlineData("dull-ache", CautionKind.EaseOff, "A dull ache in the joint", "Go back a little.")]
    [InlineData("sharp-stab", CautionKind.Stop, "A sharp stab", "End the exercise.")]
    [InlineData("slow-breath", CautionKind.TakeCare, "Keep breathing", "Never hold your breath.")]
    public void A_caution_is_bound(string id, CautionKind kind, string title, string body)
    {
        var caution = LittlePractice.Golden.Read().Find(new CautionId(id));
        Assert.NotNull(caution);
        Assert.Equal((kind, title), (caution.Kind, caution.Title));
        Assert.Equal([body], caution.Body.Lines());
        Assert.Equal(Location.Whole($"cautions/{id}.md"), caution.At);
    }

    [Fact]
    public void What_it_attaches_to_is_bound_key_by_key()
    {
        var practice = LittlePractice.Golden.Read();
        Assert.Null(practice.Find(new CautionId("sharp-stab"))?.AttachesTo);
        Assert.Equal(
            new Attachment(Stage.Gain, Position.Standing, "ankle dorsiflexion", Region.Find("ankle"), "balance"),
            practice.Find(new CautionId("dull-ache"))?.AttachesTo
        );
    }

    [Theory]
    [InlineData("hard-effort")]
    [InlineData("long-contraction")]
    [InlineData("head-low")]
    public void It_may_attach_to_what_the_dose_makes_of_an_exercise(string property) =>
        Assert.Equal(
            property,
            LittlePractice
                .Golden.Edit("cautions/dull-ache.md", "property: balance", "property: " + property)
                .Read()
                .Find(new CautionId("dull-ache"))
                ?.AttachesTo?.Property
        );

    [Fact]
    public void It_may_attach_to_a_thing_in_its_very_words()
    {
        var thing = LittlePractice
            .Golden.Edit("cautions/dull-ache.md", "property: balance", "property: balance, equipment: a stretchy band")
            .Read()
            .Find(new CautionId("dull-ache"))
            ?.AttachesTo?.Equipment;
        Assert.Equal("a stretchy band", thing?.Value);
        Assert.Equal("cautions/dull-ache.md", thing?.At.File);
    }

    /// <summary>What cannot be told touches everybody: the error at the caution then blocks everyone who moves.</summary>
    [Fact]
    public void Where_it_cannot_be_told_what_it_attaches_to_it_attaches_everywhere()
    {
        var findings = new Findings();
        var wrong = LittlePractice.Golden.Edit(
            "cautions/slow-breath.md",
            "kind: take-care",
            "kind: take-care\nattaches-to: gain"
        );
        var practice = PracticeReader.Read(wrong.Folder, findings).Practice;
        Assert.Equal(["cautions/slow-breath.md:4:14"], findings.Select(f => f.At.ToString()));
        Assert.Equal(new Attachment(null, null, null, null, null), practice?.Find(new CautionId("slow-breath"))?.AttachesTo);
        Assert.True(practice is not null && findings.Block(new("ansel"), Reach.Of(practice)));
    }
}
