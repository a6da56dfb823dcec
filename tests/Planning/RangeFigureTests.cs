using Gradus.Auditing;

namespace Gradus.Tests.Planning;

/// <summary>practice-format.md, Exercises: what was read and what the sport asks, in letters and exercises.</summary>
public sealed class RangeFigureTests
{
    private const string Header = "date,motion,side,mode,value,unit,instrument,by,trials,after\n";

    private static readonly LittlePractice Practice = Club
        .Empty.With(
            "sports/epee.yaml",
            """
            name: Épée
            stance: Which hand?
            roles: { front leg: right, rear leg: left }
            demands:
              - position: lunge
                motion: lunge ankle dorsiflexion
                side: rear leg
                mode: active
                at-least: 35
                because: The heel stays down.
              - position: long lunge
                motion: lunge ankle dorsiflexion
                side: rear leg
                mode: active
                at-least: 37.5
                because: The heel stays down.
              - position: flèche
                motion: knee to wall
                at-least: 9
                because: The knee goes forward.

            """
        )
        .Exercise("calf-hold", "2 x hold 30 s, each side", body: "It is TEXT.\n## Do\nIt is TEXT.")
        .Member("ada", ["- use: calf-hold"], weeks: 4, letter: "It is TEXT.")
        .With(
            "clients/ada/readings.csv",
            Header
                + "2026-10-01,lunge ankle dorsiflexion,left,active,30,deg,inclinometer,,,\n"
                + "2026-12-01,lunge ankle dorsiflexion,left,passive,33.5,deg,goniometer,,,\n"
                + "2026-12-20,lunge ankle dorsiflexion,left,active,44,deg,inclinometer,,,training\n"
                + "2026-11-01,lunge ankle dorsiflexion,right,active,36,deg,inclinometer,,,\n"
                + "2026-11-04,lunge ankle dorsiflexion,right,active,38,deg,inclinometer,,,\n"
                + "2026-12-01,knee to wall,right,active,-1.5,cm,tape,,,\n"
                + "2026-12-01,thoracolumbar flexion,,active,60,deg,inclinometer,,,\n"
        );

    [Theory]
    [InlineData("{reading: lunge ankle dorsiflexion left}", "33.5° on 1 December 2026")]
    [InlineData("{reading: lunge ankle dorsiflexion rear leg}", "33.5° on 1 December 2026")]
    [InlineData("{reading:lunge  ankle dorsiflexion left}", "33.5° on 1 December 2026")]
    [InlineData("{reading: knee to wall front leg}", "-1.5 cm on 1 December 2026")]
    [InlineData("{reading: lunge ankle dorsiflexion right}", "37° on 1 November 2026 to 4 November 2026, mean of 2 days")]
    [InlineData("{demand: lunge ankle dorsiflexion rear leg}", "37.5°")]
    [InlineData("{demand: lunge ankle dorsiflexion left}", "37.5°")]
    [InlineData("{demand: knee to wall right}", "9 cm")]
    public void It_is_filled_in_a_letter_and_in_an_exercise(string written, string said)
    {
        var plan = Written(written).Plan("ada");
        string[] line = [$"It is {said}."];
        Assert.Equal(line, plan.Programme.Letter.Lines());
        Assert.Equal(line, plan.Exercise(new("calf-hold")).Text.Why.Lines());
        Assert.Equal(line, plan.Sessions[0].Uses[0].Text.Do.Lines());
        Assert.Empty(Found(written));
    }

    [Fact]
    public void A_role_is_the_side_of_the_client_who_reads_it()
    {
        var mirrored = Written("{reading: lunge ankle dorsiflexion rear leg}")
            .Edit("clients/ada/client.yaml", "stance: right", "stance: left");
        Assert.StartsWith("It is 37°", Assert.Single(mirrored.Plan("ada").Programme.Letter.Lines()), StringComparison.Ordinal);
    }

    [Fact]
    public void In_German_it_is_German()
    {
        var german = Written("{reading: lunge ankle dorsiflexion left}")
            .Edit("clients/ada/client.yaml", "language: en", "language: de");
        Assert.Equal(["It is 33,5° am 1. Dezember 2026."], german.Plan("ada").Programme.Letter.Lines());
    }

    /// <summary>What the client reads is judged, whatever the coach's own text has.</summary>
    [Theory]
    [InlineData("knee to wall right", "Bis -1,5 cm am 1. Dezember 2026.", "")]
    [InlineData("knee to wall left", null, "Ada Wherry's left knee to wall was never measured.")]
    public void A_translation_is_filled_and_judged_too(string named, string? said, string found)
    {
        var german = Practice
            .Edit("clients/ada/client.yaml", "language: en", "language: de")
            .With("exercises/calf-hold.de.md", $"---\ntitle: Wade\n---\n## Do\nBis {{reading: {named}}}.");
        Assert.StartsWith(found, string.Concat(Found(german)), StringComparison.Ordinal);
        if (said is not null)
            Assert.Equal([said], german.Plan("ada").Sessions[0].Uses[0].Text.Do.Lines());
    }

    [Theory]
    [InlineData(
        "{reading: hip extension left}",
        "Ada Wherry's left hip extension was never measured.",
        "Write it in readings.csv, or say it without braces."
    )]
    [InlineData(
        "{reading: knee to wall left}",
        "Ada Wherry's left knee to wall was never measured.",
        "Did you mean the right knee to wall? Write it in readings.csv, or say it without braces."
    )]
    [InlineData(
        "{demand: lunge ankle dorsiflexion front leg}",
        "No sport of Ada Wherry's asks for anything of the right lunge ankle dorsiflexion.",
        "Did you mean the left lunge ankle dorsiflexion? Write it under 'demands' of the sport, or say it without braces."
    )]
    [InlineData("{reading: knee to wall rear log}", "'rear log' is no one side of Ada Wherry.", "Did you mean 'rear leg'?")]
    [InlineData(
        "{demand: knee to wall both}",
        "'both' is no one side of Ada Wherry.",
        "Write left, right, or what the sport calls it."
    )]
    public void What_the_client_does_not_have_is_found_at_each_place(string written, string message, string help) =>
        Assert.Equal(Enumerable.Repeat(message + " " + help, 3), Found(written));

    /// <summary>The calf is held by her alone.</summary>
    [Fact]
    public void Of_an_exercise_only_those_are_asked_who_do_it()
    {
        var two = Written("{reading: knee to wall right}")
            .Exercise("sway", "2 x hold 30 s, each side")
            .Member("bea", ["- use: sway"], weeks: 4);
        Assert.Empty(Found(two));
    }

    private static string[] Found(string written) => Found(Written(written));

    private static string[] Found(LittlePractice practice)
    {
        var read = practice.Read();
        return
        [
            .. RuleBook
                .Check(read, Planned.Trainings(read), new(2027, 1, 4), true)
                .Where(f => f.Rule.Text == "range-number-missing")
                .Select(f => $"{f.Message} {f.Help}"),
        ];
    }

    private static LittlePractice Written(string text) =>
        Practice
            .Edit("clients/ada/programme.md", "TEXT", text)
            .With("exercises/calf-hold.md", Practice["exercises/calf-hold.md"].Replace("TEXT", text, StringComparison.Ordinal));
}
