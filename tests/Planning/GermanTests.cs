using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>What is put together from several words is good German: the sides with their endings, dates, numbers,
/// doses.</summary>
public sealed class GermanTests
{
    private static readonly Words German = LittlePractice.Golden.Read().Words.In("de")
        ?? throw new InvalidOperationException("No German.");

    private static readonly LittlePractice Club = Domain
        .Club.Empty.Edit("practice.md", "language: en", "language: de")
        .With(
            "sports/epee.yaml",
            "name: Degenfechten\nstance: Welche Hand führt die Waffe?\nroles: { Waffenarm: right, Waffenhand: right, "
                + "vorderes Bein: right, hinterer Fuß: left, Rückseite: left leg }\n"
        );

    [Theory]
    [InlineData(1, "1 Sekunde")]
    [InlineData(60, "1 Minute")]
    [InlineData(61, "1 min 1 s")]
    [InlineData(121, "2 min 1 s")]
    public void Spans(int seconds, string said) => Assert.Equal(said, German.Span(new(seconds)));

    [Fact]
    public void Dates_lists_ranges_and_tenths()
    {
        Assert.Equal("Montag, 7. Dezember 2026", German.Date(new(2026, 12, 7)));
        Assert.Equal("Matte, Wand und Stufe", German.And(["Matte", "Wand", "Stufe"]));
        Assert.Equal("Wochen 1 bis 3", German.Weeks([1, 2, 3]));
        Assert.Equal("30 bis 60 Sekunden", German.Spans(new(30, 60)));
        Assert.Equal("mit 32,5 Prozent deiner vollen Kraft", German.Say("at-per-cent", ("percent", 32.50m)));
        Assert.Equal("mit 32 Prozent deiner vollen Kraft", German.Say("at-per-cent", ("percent", 32.0m)));
    }

    [Fact]
    public void Each_side_has_the_ending_of_its_limb()
    {
        var stance = Assert.Single(Plan("hold 30 s, on vorderes Bein").Stances);
        Assert.Equal(
            [
                "Welche Hand führt die Waffe? Du hast gesagt: links.",
                "Bei dir: Waffenarm LINKS, Waffenhand LINKS, vorderes Bein LINKS, hinterer Fuß RECHTS und Rückseite RECHTS.",
            ],
            stance.Sentences
        );
        Assert.Equal(
            [
                "Dein Waffenarm ist links.",
                "Deine Waffenhand ist links.",
                "Dein vorderes Bein ist links.",
                "Dein hinterer Fuß ist rechts.",
                "„Rückseite“ ist bei dir rechts.",
            ],
            stance.Roles.Select(r => r.Sentence)
        );
    }

    [Theory]
    [InlineData(
        "2 x hold 30 s, rest 20 s, on vorderes Bein",
        "Sätze 2; Halten 30 s; Pause zwischen Sätzen 20 s; Minuten, etwa 1½"
    )]
    [InlineData("1 x hold 60 s, each side, plus 1 x on left", "Sätze, linkes Bein 2; Halten 60 s; Minuten, etwa 3")]
    [InlineData(
        "1 x 3 x press 10 s at 60%, pause 5 s, both sides",
        "Drücken 3 × 10 s; Kraft 60 %; Pause dazwischen 5 s; Minuten, etwa ½"
    )]
    [InlineData(
        "1 x move 1 reps, tempo 3-1-x-1, load 2 kg, leave 1",
        "Bewegen, Wiederholungen 1; Gewicht 2 kg; Tempo 3 s ab, 1 s warten, schnell auf, 1 s warten; Wiederholungen übrig 1; "
            + "Minuten, etwa ½"
    )]
    [InlineData("1 x breathe 5 breaths", "Ruhig atmen, Atemzüge 5; Minuten, etwa 1")]
    public void A_dose_in_rows(string dose, string rows) =>
        Assert.Equal(rows, string.Join("; ", Plan(dose).Exercises[0].Uses[0].Rows.Select(r => $"{r.What} {r.Values[0].Said}")));

    private static Plan Plan(string dose) =>
        Club.Exercise("calf-hold", dose, trains: "ankle dorsiflexion")
            .Member("ida", ["- use: calf-hold"], stance: "left")
            .Edit("clients/ida/client.yaml", "language: en", "language: de")
            .Plan("ida");
}
