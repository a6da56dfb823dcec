using Gradus.Domain;

namespace Gradus.Tests.Planning;

public sealed class PlannedEmergencyTests
{
    private static readonly LittlePractice Called = Club
        .Empty.With(
            "cautions/sharp-stab.md",
            "---\ntitle: A sharp stab\nkind: stop\n---\nCall {emergency} **now: {emergency}**.\n"
        )
        .Exercise("sway", "hold 30 s, each side", body: "## Do\nSway. Call {emergency} if you faint.")
        .Member("ansel", ["- use: sway"], letter: "In an emergency it is {emergency}.");

    [Theory]
    [InlineData("{ GB: { call: \"999\" } }", "999", "tel:999")]
    [InlineData("{ GB: { call: \"+44 112\" } }", "+44 112", "tel:+44112")]
    public void Every_text_of_the_coach_has_the_number_and_it_can_be_pressed(string emergency, string call, string address)
    {
        var plan = Called.Edit("practice.md", "{ GB: { call: \"999\" } }", emergency).Plan("ansel");
        var caution = plan.Cautions.Single(c => c.Id.Text == "sharp-stab").Body;
        Assert.Equal([$"Call {call} now: {call}."], caution.Lines());
        Assert.Equal([address, address], Links(caution.Inlines()));
        Assert.Equal([$"In an emergency it is {call}."], plan.Programme.Letter.Lines());
        Assert.Equal([address], Links(plan.Programme.Letter.Inlines()));
        Assert.Equal([$"Sway. Call {call} if you faint."], plan.Exercises[0].Text.Do.Lines());
        Assert.Equal((call, address), (plan.Emergency.Call, plan.Emergency.Address));
    }

    [Fact]
    public void Each_number_of_the_sentence_can_be_pressed()
    {
        var plan = Called
            .Edit(
                "practice.md",
                "{ GB: { call: \"999\" } }",
                "{ GB: { call: \"999\", unsure: \"111\", text: 112 works too within 24 hours. } }"
            )
            .Plan("ansel");
        Assert.Equal(["tel:999", "tel:111", "tel:112"], Links(plan.Emergency.Sentence));
        Assert.StartsWith("Call 999 for chest pain", Prose.PlainOf(plan.Emergency.Sentence), StringComparison.Ordinal);
        Assert.EndsWith(
            "Not sure? Call 111. 112 works too within 24 hours.",
            Prose.PlainOf(plan.Emergency.Sentence),
            StringComparison.Ordinal
        );
        Assert.Equal(["tel:999"], Links(plan.Emergency.ChestFirst));
    }

    /// <summary>One that is done on each side loads both wrists; a back has no sides.</summary>
    [Fact]
    public void A_session_says_what_each_of_its_exercises_loads_on_the_clients_own_sides()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, each side", "loads: [hip, lower-back]")
            .Exercise("brace", "hold 20 s, on left", "loads: [wrist]")
            .Member("ansel", ["- use: sway\n- use: brace"])
            .Plan("ansel");
        var loads = plan.Sessions[0].LoadedPlaces().Split(' ').OrderDescending(StringComparer.Ordinal).ToArray();
        Assert.Equal(["sway", "brace"], loads.Select(l => l.Split('=')[0]));
        Assert.Contains("wrist:left", loads[1].Split('=')[1].Split(','));
        Assert.Contains("hip", loads[0].Split('=')[1].Split(','));
        Assert.Contains(",lower-back", loads[0], StringComparison.Ordinal);
    }

    private static IEnumerable<string> Links(IEnumerable<Inline> text) => text.OfType<Inline.Link>().Select(l => l.Address);
}
