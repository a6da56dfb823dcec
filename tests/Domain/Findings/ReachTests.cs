using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class ReachTests
{
    private static readonly LittlePractice Two = Club
        .Empty.Exercise("sway", "hold 30 s, each side", "easier: nod", signs: "sharp-stab, calf-pull")
        .Exercise("brace", "hold 20 s, each side", signs: "sharp-stab, slow-breath")
        .Exercise("nod", "hold 20 s, each side")
        .Member("ansel", ["- use: sway"])
        .Member("tamsin", ["- use: brace\n- use: nod\n  from-week: 2"], weeks: 2);

    [Theory]
    [InlineData("practice.md", "ansel tamsin")]
    [InlineData("conditions.yaml", "ansel tamsin")]
    [InlineData("themes/plain/session.html", "ansel tamsin")]
    [InlineData("sports/epee.yaml", "ansel tamsin")]
    [InlineData("sports/foil.yaml", "")]
    [InlineData("exercises/sway.md", "ansel")]
    [InlineData("exercises/brace.md", "tamsin")]
    [InlineData("exercises/nod.md", "tamsin")]
    [InlineData("cautions/sharp-stab.md", "ansel tamsin")]
    [InlineData("cautions/slow-breath.md", "tamsin")]
    [InlineData("clients/ansel/client.yaml", "ansel")]
    [InlineData("clients/ansel/programme.md", "ansel")]
    [InlineData("clients/ans/client.yaml", "")]
    [InlineData("clients/ansel", "")]
    public void An_error_in_a_file_touches_those_whose_plan_is_made_from_it(string file, string touched) =>
        Assert.Equal(touched, Touched(Two, file));

    [Fact]
    public void The_file_of_every_sport_touches_those_who_play_it()
    {
        var two = Two.With(
                "sports/tennis.yaml",
                "name: Court tennis\nstance: Which hand holds the racket?\nroles: { racket arm: right }\n"
            )
            .Edit("clients/tamsin/client.yaml", "sport: epee\nstance: right", "sports: { tennis: left, epee: right }");
        Assert.Equal(("ansel tamsin", "tamsin"), (Touched(two, "sports/epee.yaml"), Touched(two, "sports/tennis.yaml")));
    }

    [Fact]
    public void A_caution_that_attaches_touches_those_whose_exercises_it_fits()
    {
        var attached = Two.With(
                "cautions/extra.md",
                "---\ntitle: Extra\nkind: stop\nattaches-to: { property: balance }\n---\nEnd.\n"
            )
            .Edit("exercises/brace.md", "not-with: [calf-strain]", "not-with: [calf-strain]\nproperties: [balance]");
        Assert.Equal("tamsin", Touched(attached, "cautions/extra.md"));
    }

    /// <summary>Ida and Odile read English in a German practice; a caution that is not there might attach to anything.</summary>
    [Theory]
    [InlineData("cautions/stechen.en.md", "ida odile")]
    [InlineData("cautions/krampf.en.md", "odile")]
    [InlineData("cautions/festhalten.en.md", "odile")]
    [InlineData("cautions/krampf.ga.md", "")]
    [InlineData("cautions/krampf.de.md", "")]
    [InlineData("cautions/krmpf.en.md", "ida odile")]
    [InlineData("cautions/krampf.eng.md", "ida odile")]
    [InlineData("exercises/fersenheben.en.md", "odile")]
    [InlineData("exercises/fersenheben.ga.md", "")]
    [InlineData("exercises/fersenhebn.en.md", "")]
    public void An_error_in_a_translation_touches_those_who_would_read_it(string file, string touched)
    {
        Assert.Equal(touched, Touched(GermanClub.Translated, file));
        Assert.Equal(touched, Touched(GermanClub.Untranslated, file));
    }

    [Fact]
    public void An_error_blocks_those_it_touches_and_a_warning_nobody()
    {
        var reach = Reach.Of(Two.Read());
        Assert.True(Found(Level.Error, null).Block(new("ansel"), reach));
        Assert.False(Found(Level.Error, null).Block(new("tamsin"), reach));
        Assert.True(Found(Level.Error, new("tamsin")).Block(new("tamsin"), reach));
        Assert.False(Found(Level.Error, new("tamsin")).Block(new("ansel"), reach));
        Assert.False(Found(Level.Warning, null).Block(new("ansel"), reach));
        Assert.False(Found(Level.Note, null).Block(new("ansel"), reach));
    }

    [Fact]
    public void Findings_stand_in_the_order_of_level_and_place_each_once()
    {
        Finding[] found =
        [
            At(Level.Note, "a.md", 1),
            At(Level.Error, "b.md", 2),
            At(Level.Error, "b.md", 1),
            At(Level.Warning, "a.md", 3),
            At(Level.Error, "B.md", 9),
            At(Level.Error, "b.md", 1),
        ];
        var findings = new Findings();
        findings.AddRange(found);
        Assert.Equal(
            ["Error B.md:9:1", "Error b.md:1:1", "Error b.md:2:1", "Warning a.md:3:1", "Note a.md:1:1"],
            findings.InOrder().Select(f => $"{f.Level} {f.At}")
        );
        Assert.Equal(6, findings.Count);
    }

    private static Findings Found(Level level, ClientId? client)
    {
        var findings = new Findings();
        findings.Add(new(new("some-rule"), level, client, Location.Whole("exercises/sway.md"), "It is wrong.", "Mend it."));
        return findings;
    }

    private static Finding At(Level level, string file, int line) =>
        new(new("some-rule"), level, null, new(file, line, 1), "It is wrong.", "Mend it.");

    private static string Touched(LittlePractice practice, string file)
    {
        var read = practice.Read();
        var reach = Reach.Of(read);
        var wrong = new Findings();
        wrong.Add(At(Level.Error, file, 1));
        Assert.All(read.Clients, c => Assert.Equal(reach.Touches(file, c.Id), wrong.Block(c.Id, reach)));
        return string.Join(' ', read.Clients.Where(c => reach.Touches(file, c.Id)).Select(c => c.Id));
    }
}
