using Gradus.Domain;
using Gradus.Figures;
using Gradus.Tests.House;

namespace Gradus.Tests.Figures.Poses;

public sealed class PoseReaderTests
{
    private static readonly SidedAngle WorkingKnee = new(JointAngle.KneeFlexion, BodySide.Working),
        OtherKnee = new(JointAngle.KneeFlexion, BodySide.Other);

    [Theory]
    [InlineData("standing, working knee flexion 30", 30, null)]
    [InlineData("standing, OTHER  Knee flexion 30 degrees", null, 30)]
    [InlineData("standing, knee flexion 30", 30, 30)]
    [InlineData("standing, both knee extension 5", -5, -5)]
    [InlineData("half-kneeling, front knee flexion 30", 30, null)]
    [InlineData("half-kneeling, rear leg works, rear knee flexion 90", 90, null)]
    [InlineData("half-kneeling, front knee flexion 30, rear leg works", null, 30)]
    [InlineData("side-lying, top knee flexion 30", 30, null)]
    [InlineData("side-lying on the working side, top knee flexion 30", null, 30)]
    public void A_word_says_which_side_is_meant(string line, int? working, int? other)
    {
        var angles = PoseOf(line).Angles.ToDictionary(a => a.Of, a => a.Degrees);
        Assert.Equal((double?)working, angles.TryGetValue(WorkingKnee, out var one) ? one : null);
        Assert.Equal((double?)other, angles.TryGetValue(OtherKnee, out var two) ? two : null);
    }

    [Theory]
    [InlineData(SideCue.FootInFront, BodySide.Working)]
    [InlineData(SideCue.FootBehind, BodySide.Other)]
    [InlineData(SideCue.KneeDown, BodySide.Other)]
    public void The_cue_says_whose_leg_stands_ahead(SideCue cue, BodySide front)
    {
        var read = PoseReader.Start(["half-kneeling"], cue);
        Assert.Equal(front, read.Pose?.Front);
        Assert.Contains(read.Pose?.Contacts ?? [], c => c.Part == new SidedPart(BodyPart.Foot, front));
    }

    [Theory]
    [InlineData(SideCue.FootInFront, "rear leg works")]
    [InlineData(SideCue.KneeDown, "front leg works")]
    public void A_leg_against_the_cue_is_found(SideCue cue, string item)
    {
        var fault = Assert.Single(PoseReader.Start(["half-kneeling", item], cue).Faults);
        Assert.Equal((1, $"'{item}' is against what was said before."), (fault.Item, fault.Message));
    }

    [Fact]
    public void The_end_cannot_change_the_legs()
    {
        var start = PoseOf("split-stance, front leg works");
        Assert.Empty(PoseReader.End(["front leg works"], start).Faults);
        Assert.Single(PoseReader.End(["rear leg works"], start).Faults);
    }

    [Fact]
    public void The_end_keeps_what_rests_and_what_is_held_but_no_angle()
    {
        var start = PoseOf("standing, hands on wall, knee flexion 20, backpack on back, seen from the front");
        var end = PoseReader.End(["standing", "working hand off wall", "working hand moves"], start).Pose;
        Assert.NotNull(end);
        Assert.Empty(end.Angles);
        Assert.Equal((View.Front, 1), (end.View, end.Things.Count));
        Assert.Equal([BodySide.Other], end.Contacts.Where(c => c.Part.Part == BodyPart.Hand).Select(c => c.Part.Side));
        Assert.Equal(new SidedPart(BodyPart.Hand, BodySide.Working), end.Moves);
    }

    [Fact]
    public void A_flat_foot_lifts_its_heel_and_keeps_its_ball()
    {
        var end = PoseReader.End(["heels off floor"], PoseOf("standing")).Pose;
        Assert.Equal([BodyPart.Ball, BodyPart.Ball], end?.Contacts.Select(c => c.Part.Part));
    }

    [Fact]
    public void What_was_not_there_cannot_leave() =>
        Assert.Equal(
            "'hands off wall': it does not rest there.",
            Assert.Single(PoseReader.End(["hands off wall"], PoseOf("standing, hands on thighs")).Faults).Message
        );

    [Theory]
    [InlineData("split-stance", "rear foot off floor", 1)]
    [InlineData("standing, hands on thighs", "hands off thighs", 2)]
    [InlineData("standing, hands on thighs", "working hand off thigh", 3)]
    [InlineData("standing", "feet off floor", 0)]
    public void What_rests_can_leave(string start, string item, int left)
    {
        var end = PoseReader.End([item], PoseOf(start));
        Assert.Empty(end.Faults);
        Assert.Equal(left, end.Pose?.Contacts.Count);
    }

    [Fact]
    public void Of_two_hundred_words_the_first_that_are_too_many_are_found()
    {
        var line = "standing, " + string.Join(", ", Enumerable.Repeat("working knee flexion 30", 66));
        var faults = PoseReader.Start(Items(line), null).Faults;
        Assert.Equal("This pose has 67 items, and 40 are the most.", faults[^1].Message);
        Assert.Equal(PoseReader.MostItems, faults[^1].Item);
        Assert.True(faults.Count <= PoseReader.MostItems);
    }

    [Fact]
    public void A_sentence_of_two_hundred_words_is_one_fault_and_is_not_repeated_whole()
    {
        var fault = Assert.Single(
            PoseReader.Start(["standing", string.Join(' ', Enumerable.Repeat("and then", 100))], null).Faults
        );
        Assert.True(fault.Message.Length < 120, fault.Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData(",")]
    [InlineData("standing,,")]
    [InlineData("standing, knee flexion ٣٠")]
    [InlineData("standing, knee flexion 999")]
    [InlineData("standing, hand 999 cm off floor")]
    [InlineData("standing, hands 4 cm on floor")]
    [InlineData("standing, \u0130\u0131 flexion 3")]
    [InlineData("standing, knee moves, foot moves")]
    [InlineData("standing, bottle in head")]
    [InlineData("standing, backpack in hand")]
    [InlineData("standing, head push sideways")]
    [InlineData("standing, working head on floor")]
    [InlineData("prone, top hand on floor")]
    public void Odd_poses_are_found_and_nothing_is_thrown(string line)
    {
        var read = Movement.Read(new(Items(line).ToSeries(), []), null);
        Assert.NotEmpty(read.Faults);
        Assert.Null(read.Movement);
    }

    /// <summary>Words of the grammar and others, put together by chance: each is read or found, and every fault has its
    /// place.</summary>
    [Fact]
    public void No_row_of_words_makes_it_throw()
    {
        string[] words =
        [
            .. PoseWords.Which,
            .. PoseWords.Parts.Keys,
            .. PoseWords.Things.Keys,
            .. PoseWords.Motions.Keys.SelectMany(m => m.Split(' ')),
            .. PoseWords.Directions.Keys,
            .. new[]
            {
                "on",
                "off",
                "the",
                "floor",
                "wall",
                "moves",
                "push",
                "90",
                "4 cm",
                "trunk",
                "level",
                "seen from",
                "\t",
                "é",
                "to",
            },
        ];
        var (read, chance) = (0, new Chance(3));
        for (var i = 0; i < LongProof.Cases(5000); i++)
        {
            var items = Enumerable
                .Range(0, 3)
                .Select(_ => string.Join(' ', Enumerable.Range(0, 1 + chance.Below(5)).Select(_ => chance.Of(words))))
                .Prepend(chance.Of(PoseBase.All).Name)
                .ToArray();
            var found = PoseReader.Start(items, null);
            read += 3 - found.Faults.Select(f => f.Item).Distinct().Count();
            Assert.All(found.Faults, f => Assert.InRange(f.Column + f.Length, 1, Math.Max(1, items[f.Item].Length)));
        }

        Assert.InRange(read, 1, LongProof.Cases(5000));
    }

    private static Pose PoseOf(string line)
    {
        var read = PoseReader.Start(Items(line), null);
        Assert.Empty(read.Faults);
        return Assert.IsType<Pose>(read.Pose);
    }

    private static string[] Items(string line) => [.. PoseReader.Items(line).Select(i => i.Text)];
}
