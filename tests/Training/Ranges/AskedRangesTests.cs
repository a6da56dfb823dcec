using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What a sport asks of a client's ranges, and what a number in braces says of it to the client. The front leg is the
/// right one; the neck has no sides, no way to measure it and no error (motions.yaml).</summary>
public sealed class AskedRangesTests
{
    private const string Read = """
        date,motion,side,mode,value,unit,instrument,by,trials
        2026-12-01,knee to wall,left,active,12,cm,tape,om,1
        2026-12-20,knee to wall,left,active,8,cm,tape,om,1
        2026-12-20,knee to wall,right,active,10,cm,tape,om,1
        2026-12-20,cervical flexion,,active,50,deg,inclinometer,om,1

        """;

    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("bend", "2 x hold 30 s, each side")
        .With(
            "sports/epee.yaml",
            """
            name: Épée fencing
            stance: Which hand holds the weapon?
            roles: { front leg: right, rear leg: left }
            demands:
              - { position: lunge, motion: knee to wall, side: rear leg, mode: active, at-least: 9, because: Reach. }
              - { position: on guard, motion: knee to wall, side: rear leg, mode: active, at-least: 11, because: Sit low. }
              - { position: on guard, motion: knee to wall, side: front leg, mode: active, at-least: 13, because: Sit low. }
              - { position: lunge, motion: lunge ankle dorsiflexion, side: rear leg, mode: active, at-least: 35, because: Reach. }
              - { position: on guard, motion: cervical flexion, mode: active, at-least: 40, because: Look down. }

            """
        )
        .Member("ada", ["- use: bend"], weeks: 2);

    /// <summary>A name that is no one side says nothing of a motion that has two.</summary>
    [Theory]
    [InlineData(RangeFigureKind.Reading, "knee to wall", "rear leg", "8")]
    [InlineData(RangeFigureKind.Reading, "knee to wall", "front leg", "10")]
    [InlineData(RangeFigureKind.Reading, "knee to wall", "parry arm", "")]
    [InlineData(RangeFigureKind.Reading, "knee to wall", null, "")]
    [InlineData(RangeFigureKind.Reading, "lunge ankle dorsiflexion", "rear leg", "")]
    [InlineData(RangeFigureKind.Reading, "cervical flexion", null, "50")]
    [InlineData(RangeFigureKind.Demand, "knee to wall", "rear leg", "11")]
    [InlineData(RangeFigureKind.Demand, "knee to wall", "front leg", "13")]
    [InlineData(RangeFigureKind.Demand, "lunge ankle dorsiflexion", "rear leg", "35")]
    [InlineData(RangeFigureKind.Demand, "lunge ankle dorsiflexion", "front leg", "")]
    [InlineData(RangeFigureKind.Demand, "cervical flexion", null, "40")]
    public void A_number_in_braces_is_the_client_s_own(RangeFigureKind kind, string motion, string? side, string said)
    {
        var (practice, training, ranges) = Of(Read);
        var figure = new Inline.RangeFigure(kind, practice.MeasureOf(motion).Motion, side, "", Location.Whole("letter.md"));
        Assert.Equal(said, $"{SaidRange.Of(figure, training.Stances, ranges).Value}");
    }

    [Fact]
    public void What_is_asked_twice_and_was_never_measured_is_missing_once() =>
        Assert.Equal(
            ["Left knee to wall", "Right knee to wall", "Left lunge ankle dorsiflexion", " cervical flexion"],
            Of("").Ranges.Never.Where(n => n.Demand is not null).Select(n => $"{n.Side} {n.Ways[0].Motion.Name}")
        );

    /// <summary>Of what has no error the two numbers stand side by side, whoever wrote down how it is measured.</summary>
    [Fact]
    public void Without_an_error_the_way_of_measuring_need_not_be_written_down() =>
        Assert.Null(Of(Read).Ranges.Demands.Single(d => d.Measure.Motion.Name == "cervical flexion").Open);

    private static (Practice Practice, Training Training, ClientRanges Ranges) Of(string read)
    {
        var practice = (read.Length == 0 ? Practice : Practice.With("clients/ada/readings.csv", read)).Read();
        var client = practice.Clients.Single(c => c.Id.Text == "ada");
        var training = Training.Of(practice, client);
        return (practice, training, ClientRanges.Of(practice, client, training, new(2027, 1, 4)));
    }
}
