using Gradus.Domain;

namespace Gradus.Tests.Planning;

/// <summary>practice-format.md, Exercises: prose is filled per use.</summary>
public sealed class FilledTextTests
{
    [Theory]
    [InlineData("{hold}", "2-3 x hold 30-60 s, rest 20 s, each side", "30 to 60 seconds")]
    [InlineData("{hold}", "2 x hold 30 s, each side", "30 seconds")]
    [InlineData("{hold}", "2 x hold 2-4 min, each side", "2 to 4 minutes")]
    [InlineData("{hold}", "2 x hold 90 s, each side", "1 min 30 s")]
    [InlineData("{hold}", "2 x hold 1 min 30 s, each side", "1 min 30 s")]
    [InlineData("{hold}", "hold 5-8 breaths, each side", "5 to 8 slow breaths")]
    [InlineData("{hold}", "hold 1 breaths, each side", "1 slow breath")]
    [InlineData("{press}", "2 x press 10-20 s at 40%, each side", "10 to 20 seconds")]
    [InlineData("{pull}", "2 x pull 10 s at 40%, each side", "10 seconds")]
    [InlineData("{raise}", "2 x 4-6 x raise 5 s, each side", "5 seconds")]
    [InlineData("{rest}", "2 x hold 30 s, rest 75 s, each side", "1 min 15 s")]
    [InlineData("{effort}", "2 x press 10 s at 40-60%, each side", "40 to 60 per cent")]
    [InlineData("{effort}", "2 x press 20 s at 20 to 80% in 4 steps, each side", "20 to 80 per cent")]
    [InlineData("{effort}", "2 x press 20 s at effort 7, each side", "7")]
    [InlineData("{sets}", "2-4 x hold 30 s, each side", "2 to 4")]
    [InlineData("{sets}", "hold 30 s, each side", "1")]
    [InlineData("{reps}", "2 x move 8-12 reps, each side", "8 to 12")]
    [InlineData("{reps}", "2 x 4-6 x raise 5 s, each side", "4 to 6")]
    [InlineData("{breaths}", "breathe 4-6 breaths, each side", "4 to 6")]
    [InlineData("{side}", "hold 30 s, on rear leg", "left leg")]
    [InlineData("{side}", "hold 30 s, each side", "working leg")]
    public void A_placeholder_is_filled_with_the_range_over_the_weeks(string placeholder, string dose, string said)
    {
        var plan = Club
            .Empty.Exercise("sway", dose, body: $"## Do\nIt is {placeholder}.")
            .Member("ansel", ["- use: sway"], weeks: 8)
            .Plan("ansel");
        Assert.Equal([$"It is {said}."], plan.Sessions[0].Uses[0].Text.Do.Lines());
        Assert.Equal([$"It is {said}."], plan.Exercise(new("sway")).Text.Do.Lines());
    }

    [Fact]
    public void A_use_says_its_own_figures_and_the_exercise_those_of_all_its_uses()
    {
        var plan = Sway("{hold}, {sets} sets, {side}")
            .Member(
                "ansel",
                [
                    "- use: sway\n  side: front leg\n  by-week: { 1: 2 x hold 30 s, 2: 2 x hold 40 s }",
                    "- use: sway\n  side: front leg\n  by-week: { 1: 3 x hold 60 s }",
                ],
                weeks: 2
            )
            .Plan("ansel");
        Assert.Equal(["30 to 40 seconds, 2 sets, right leg"], plan.Sessions[0].Uses[0].Text.Do.Lines());
        Assert.Equal(["1 minute, 3 sets, right leg"], plan.Sessions[1].Uses[0].Text.Do.Lines());
        Assert.Equal(["30 to 60 seconds, 2 to 3 sets, right leg"], plan.Exercises[0].Text.Do.Lines());
    }

    [Fact]
    public void A_figure_that_no_week_has_is_the_exercise_s_own()
    {
        var plan = Sway("Rest {rest}.").Member("ansel", ["- use: sway\n  by-week: { 1: hold 30 s }"]).Plan("ansel");
        Assert.Equal(["Rest 20 seconds."], plan.Sessions[0].Uses[0].Text.Do.Lines());
    }

    [Fact]
    public void Placeholders_are_filled_wherever_the_text_stands_and_inside_emphasis()
    {
        var plan = Club
            .Empty.Exercise(
                "sway",
                "2 x hold 30 s, rest 20 s, each side",
                body: "Hold {hold}.\n\n## Set up\n- For **{hold}**.\n\n## Do\nGo.\n\n## Later\n> Rest {rest}."
            )
            .Member("ansel", ["- use: sway"])
            .Plan("ansel");
        var text = plan.Exercises[0].Text;
        Assert.Equal(["Hold 30 seconds."], text.Why.Lines());
        Assert.Equal(["For 30 seconds."], text.SetUp.Lines());
        Assert.Equal(["Later", "Rest 20 seconds."], text.More.Lines());
    }

    [Fact]
    public void A_link_leads_to_an_exercise_only_where_the_client_does_it()
    {
        const string Letter =
            "See the [sway](../../exercises/sway.md), the *[nod](../../exercises/nod.md)* and the [club](https://example.org/).";
        var practice = Club
            .Empty.Exercise("sway", "hold 30 s, each side", body: "## Do\nFirst the [nod](nod.md).")
            .Exercise("nod", "hold 10 s", trains: "cervical flexion", body: "## Do\nThen the [sway](../exercises/sway.md).")
            .Member("ansel", ["- use: sway"], letter: Letter)
            .Member("tamsin", ["- use: sway\n- use: nod"], letter: Letter);
        Assert.Equal(["sway", "https://example.org/"], Links(practice.Plan("ansel").Programme.Letter));
        Assert.Equal(["sway", "nod", "https://example.org/"], Links(practice.Plan("tamsin").Programme.Letter));
        Assert.Equal(["See the sway, the nod and the club."], practice.Plan("ansel").Programme.Letter.Lines());
        Assert.Empty(Links(practice.Plan("ansel").Exercises[0].Text.Do));
        Assert.Equal(["First the nod."], practice.Plan("ansel").Exercises[0].Text.Do.Lines());
        Assert.Equal(["nod"], Links(practice.Plan("tamsin").Exercises[0].Text.Do));
        Assert.Equal(["sway"], Links(practice.Plan("tamsin").Exercises[1].Text.Do));
    }

    private static LittlePractice Sway(string text) =>
        Club.Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side", body: $"## Do\n{text}");

    private static IEnumerable<string> Links(Prose prose) =>
        prose
            .Inlines()
            .Select(i =>
                i switch
                {
                    Inline.ExerciseLink link => link.Exercise.Text,
                    Inline.Link link => link.Address,
                    _ => "",
                }
            )
            .Where(address => address.Length > 0);
}
