using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is trained, asked for and measured, held together by motion and side. "Knee to wall" is one of the ways to
/// measure the ankle that bends (motions.yaml); the programme goes from 2027-01-04.</summary>
public sealed class RangeWorkTests
{
    private const string Head = "date,motion,side,mode,value,unit,instrument,by,trials";

    [Theory]
    [InlineData("", "", "Left trained")]
    [InlineData("2026-12-01,knee to wall,left,active,10,cm,tape,om,1", "", "")]
    [InlineData("2026-12-01,knee to wall,right,active,10,cm,tape,om,1", "", "Left trained")]
    [InlineData("", "left, knee to wall", "Left asked trained")]
    [InlineData("", "right, knee to wall", "Right asked; Left trained")]
    [InlineData("2026-12-01,knee to wall,left,active,10,cm,tape,om,1", "right, knee to wall", "Right asked")]
    public void What_is_trained_or_asked_for_and_was_never_measured_is_told_once(string read, string asked, string never) =>
        Assert.Equal(
            never,
            string.Join(
                "; ",
                Of("ankle dorsiflexion", read, asked)
                    .Ranges.Never.Select(n => $"{n.Side}{(n.Demand is null ? "" : " asked")}{(n.IsTrained ? " trained" : "")}")
            )
        );

    /// <summary>It may be measured in one way alone.</summary>
    [Fact]
    public void What_has_one_way_to_be_measured_is_told_too() =>
        Assert.Equal([(Side.Left, 1)], Of("knee flexion").Ranges.Never.Select(n => (n.Side ?? default, n.Ways.Count)));

    [Theory]
    [InlineData("knee to wall", Side.Left, true)]
    [InlineData("knee to wall", Side.Right, false)]
    [InlineData("knee flexion", Side.Left, false)]
    public void Work_is_of_a_motion_and_a_side(string motion, Side side, bool works)
    {
        var (practice, client, training, _) = Of("ankle dorsiflexion");
        var work = PlannedWork.Of(client, training);
        Assert.Equal(works, work.Any(w => w.Works(practice.MeasureOf(motion), side)));
        Assert.Equal(works, work.All(w => w.Works(practice.MeasureOf(motion), side)));
    }

    /// <summary>Two uses of one week are one piece of work.</summary>
    [Fact]
    public void What_is_worked_twice_in_a_week_is_one()
    {
        var (_, client, training, _) = Of("ankle dorsiflexion");
        Assert.Equal(4, training.Uses.Sum(u => u.Weeks.Count));
        Assert.Equal([1, 2], PlannedWork.Of(client, training).Select(w => w.Week));
    }

    [Theory]
    [InlineData("no", "ankle dorsiflexion")]
    [InlineData("yes", "")]
    public void More_range_is_not_the_aim_of_very_mobile_joints(string answer, string gained)
    {
        var ranges = Of("ankle dorsiflexion", answers: $"calf-strain: no, very-mobile-joints: {answer}").Ranges;
        Assert.Equal(answer == "yes", ranges.IsVeryMobile);
        Assert.Equal(gained, string.Join(", ", ranges.Gained.Select(m => m.Name)));
    }

    /// <summary>Through two points there is always a line; it says nothing.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(4, true)]
    public void A_line_goes_through_three_occasions_or_more(int occasions, bool hasLine)
    {
        var read = Enumerable.Range(1, occasions).Select(n => $"2026-0{2 * n}-01,knee to wall,left,active,{10 + n},cm,tape,om,1");
        Assert.Equal(hasLine, Assert.Single(Of("ankle dorsiflexion", string.Join('\n', read)).Ranges.Series).Line is not null);
    }

    private static (Practice Practice, Client Client, Training Training, ClientRanges Ranges) Of(
        string trains,
        string read = "",
        string asked = "",
        string answers = "calf-strain: no"
    )
    {
        var club = Club
            .Empty.Exercise("bend", "2 x hold 30 s, each side", position: "supine", trains: trains)
            .Member("ada", ["- use: bend\n  side: left\n- use: bend\n  side: left"], weeks: 2, answers: $"{{ {answers} }}");
        if (read.Length > 0)
            club = club.With("clients/ada/readings.csv", $"{Head}\n{read}\n");
        var demand = asked.Split(", ") is [var side, var motion]
            ? $"demands: [{{ position: lunge, motion: {motion}, side: {side}, mode: active, at-least: 9, because: Reach. }}]\n"
            : "";
        club = club.With(
            "sports/epee.yaml",
            "name: Épée fencing\nstance: Which hand holds the weapon?\nroles: { rear leg: left }\n" + demand
        );
        var practice = club.Read();
        var client = practice.Clients[0];
        var training = Training.Of(practice, client);
        return (practice, client, training, ClientRanges.Of(practice, client, training, new(2027, 1, 4)));
    }
}
