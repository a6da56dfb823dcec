using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class ExerciseReaderTests
{
    private const string Path = "exercises/calf-sway.md";

    private static readonly Exercise Exercise = Assert.IsType<Exercise>(
        LittlePractice.Golden.Read().Find(new ExerciseId("calf-sway"))
    );

    [Fact]
    public void What_it_is_is_bound()
    {
        Assert.Equal("Calf sway", Exercise.Title);
        Assert.Equal(
            ("ankle dorsiflexion", true, Limb.Leg),
            (Exercise.Trains.Name, Exercise.Trains.IsPaired, Exercise.Trains.Limb)
        );
        Assert.Equal((Stage.Gain, Position.Standing), (Exercise.Stage, Exercise.Position));
        Assert.Equal(["wall", "step"], Exercise.Equipment);
        Assert.Equal(["balance", "head-low"], Exercise.Properties);
        Assert.Equal(Location.Whole(Path), Exercise.At);
    }

    [Theory]
    [InlineData("foot in front", SideCue.FootInFront)]
    [InlineData("foot behind", SideCue.FootBehind)]
    [InlineData("knee down", SideCue.KneeDown)]
    public void Where_the_working_leg_is_is_bound(string written, SideCue cue)
    {
        Assert.Null(Exercise.Cue);
        var practice = LittlePractice.Golden.Edit(Path, "position: standing", $"position: standing\ncue: {written}");
        Assert.Equal(cue, practice.Read().Find(new ExerciseId("calf-sway"))?.Cue);
    }

    [Fact]
    public void The_dose_is_bound_with_its_place()
    {
        Assert.Equal("2-3 x hold 30-60 s, rest 20 s, each side", Exercise.Dose.Line);
        Assert.Equal("2-3 x hold 30-60 s, rest 20 s, each side", Exercise.Dose.Dose?.ToString());
        Assert.Equal(new Location(Path, 8, 7), Exercise.Dose.At);
    }

    [Fact]
    public void A_range_that_is_never_measured_cannot_be_needed()
    {
        var practice = LittlePractice.Golden.With("motions.yaml", "- { id: breathing, name: breathing, unit: none }\n");
        var finding = Assert.Single(
            practice.Edit("exercises/calf-sway.md", "needs: { knee flexion: 90,", "needs: { breathing: 90,").Findings()
        );
        Assert.Equal(("value-wrong", "'breathing' is not measured: its unit is none."), (finding.Rule.Text, finding.Message));
    }

    [Fact]
    public void A_dose_in_quotation_marks_begins_behind_them()
    {
        var quoted = LittlePractice
            .Golden.Edit("exercises/heel-sink.md", "hold 20 s, each side", "\"hold 20 s, each side, load band #2\"")
            .Read();
        Assert.Equal(new Location("exercises/heel-sink.md", 6, 8), quoted.Find(new ExerciseId("heel-sink"))?.Dose.At);
        Assert.Equal("band #2", quoted.Find(new ExerciseId("heel-sink"))?.Dose.Dose?.Terms.Load);
    }

    [Fact]
    public void A_comment_stands_beside_anything_but_a_dose()
    {
        var exercise = LittlePractice
            .Golden.Edit(Path, "stage: gain", "stage: gain                  # prepare · gain · strengthen · control · load")
            .Edit(Path, "position: standing", "position: standing           # where it is done")
            .Edit(Path, "lying ankle dorsiflexion: 4.5 }", "lying ankle dorsiflexion: 4.5 }  # the only range that blocks")
            .Read()
            .Find(new ExerciseId("calf-sway"));
        Assert.Equal((Stage.Gain, Position.Standing), (exercise?.Stage, exercise?.Position));
    }

    [Fact]
    public void The_loaded_regions_say_which_side() =>
        Assert.Equal([("ankle", false), ("knee", true)], Exercise.Loads.Select(l => (l.Region.Name, l.Other)));

    [Fact]
    public void The_ranges_it_needs_are_bound() =>
        Assert.Equal(
            [new("knee flexion", null, 90m, new(Path, 9, 10)), new("lying ankle dorsiflexion", null, 4.5m, new(Path, 9, 28))],
            Exercise.Needs
        );

    [Fact]
    public void What_it_names_is_bound_with_places()
    {
        Assert.Equal([new(new("calf-pull"), new(Path, 11, 9)), new(new("sharp-stab"), new(Path, 11, 20))], Exercise.Signs);
        Assert.Equal([new(new("calf-strain"), new(Path, 12, 12))], Exercise.NotWith);
        Assert.Equal([new(new("faint-spells"), new(Path, 13, 15))], Exercise.ClearFirst);
        Assert.Equal(new(new("heel-sink"), new(Path, 14, 9)), Exercise.Easier);
        Assert.Equal(new(new("calf-brace"), new(Path, 15, 9)), Exercise.Harder);
    }

    [Fact]
    public void Only_set_up_and_do_have_a_meaning_among_the_headings()
    {
        Assert.Equal(["The rear foot stays down."], Exercise.Text.Why.Lines());
        Assert.Equal(["Stand at a wall."], Exercise.Text.SetUp.Lines());
        Assert.Equal(["Lean in for {hold}.", "See the sink."], Exercise.Text.Do.Lines());
        Assert.Equal(["Afterwards", "Walk about."], Exercise.Text.More.Lines());
    }

    [Fact]
    public void A_placeholder_and_a_link_keep_their_places()
    {
        var inlines = Exercise.Text.Do.Inlines().ToArray();
        Assert.Equal(new("hold", new(Path, 24, 16)), Assert.Single(inlines.OfType<Inline.Placeholder>()));
        var link = Assert.Single(inlines.OfType<Inline.ExerciseLink>());
        Assert.Equal((new ExerciseId("heel-sink"), new Location(Path, 25, 8)), (link.Exercise, link.At));
    }

    [Theory]
    [InlineData("{reading: thoracic rotation left}", RangeFigureKind.Reading, "thoracic rotation", "left")]
    [InlineData("{demand: hip extension rear leg}", RangeFigureKind.Demand, "hip extension", "rear leg")]
    [InlineData("{reading:lying ankle  dorsiflexion right}", RangeFigureKind.Reading, "lying ankle dorsiflexion", "right")]
    [InlineData("{demand: thoracolumbar flexion}", RangeFigureKind.Demand, "thoracolumbar flexion", null)]
    public void A_reading_or_a_demand_in_braces_has_its_motion_and_side(
        string written,
        RangeFigureKind kind,
        string motion,
        string? side
    )
    {
        var read = LittlePractice.Golden.Edit(Path, "Stand at a wall.", $"Stand at {written}.").Read();
        var text = read.Exercises.Single(e => e.Id == Exercise.Id).Text.SetUp;
        var figure = Assert.Single(text.Inlines().OfType<Inline.RangeFigure>());
        Assert.Equal((kind, motion, side, written), (figure.Kind, figure.Motion.Name, figure.Side, figure.Written));
        Assert.Equal([$"Stand at {written.Replace("  ", " ", StringComparison.Ordinal)}."], text.Lines());
    }

    [Fact]
    public void Braces_around_anything_but_small_letters_are_found()
    {
        var odd = LittlePractice.Golden.Edit(Path, "Stand at a wall.", "Stand {} at {a wall} of {Hold} {hold2} `{hold}`.");
        Assert.Equal(Enumerable.Repeat("brace-in-text", 5), odd.Findings().Select(f => f.Rule.Text));
    }

    [Fact]
    public void Every_stage_and_every_position_can_be_written()
    {
        foreach (var stage in Enum.GetValues<Stage>())
            Assert.Equal(
                stage,
                LittlePractice
                    .Golden.Edit(Path, "stage: gain", "stage: " + Kebab.Of($"{stage}"))
                    .Read()
                    .Find(new ExerciseId("calf-sway"))
                    ?.Stage
            );
        foreach (var position in Enum.GetValues<Position>())
            Assert.Equal(
                position,
                LittlePractice
                    .Golden.Edit(Path, "position: standing", "position: " + Kebab.Of($"{position}"))
                    .Read()
                    .Find(new ExerciseId("calf-sway"))
                    ?.Position
            );
    }
}
