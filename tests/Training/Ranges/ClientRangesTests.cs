using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is asked of a client, what was never measured and what is due, from the files of a coach.</summary>
public sealed class ClientRangesTests
{
    private const string Header = "date,motion,side,mode,value,unit,instrument,by,trials,after\n";

    /// <summary>Four weeks from 2027-01-04 for the left ankle; the sport asks the rear leg for a lunge of 35 degrees.</summary>
    private static readonly LittlePractice Practice = Club
        .Empty.With("sports/epee.yaml", Sport("Épée", "right", "left"))
        .Exercise("calf-hold", "2 x hold 30 s, each side")
        .Member("ada", ["- use: calf-hold\n  side: left"], weeks: 4);

    [Fact]
    public void The_side_of_a_demand_is_that_of_the_stance()
    {
        var lines =
            "2027-01-02,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,\n"
            + "2027-01-02,lunge ankle dorsiflexion,right,active,30,deg,inclinometer,oq,1,\n";
        Assert.Equal((Side.Left, MarkWord.Enough), Demand(Ranges(Practice, lines)));
        var left = Practice.Edit("clients/ada/client.yaml", "stance: right", "stance: left");
        Assert.Equal((Side.Right, MarkWord.Short), Demand(Ranges(left, lines)));

        static (Side?, MarkWord?) Demand(ClientRanges ranges)
        {
            var one = Assert.Single(ranges.Demands);
            return (one.Side, one.Mark?.Word);
        }
    }

    [Fact]
    public void Of_two_sports_each_goes_by_its_own_stance()
    {
        var both = Practice
            .With("sports/tennis.yaml", Sport("Tennis", "right", "left"))
            .Edit("clients/ada/client.yaml", "sport: epee\n", "sports: { epee: right, tennis: left }\n")
            .Edit("clients/ada/client.yaml", "stance: right\n", "");
        Assert.Equal(
            ["epee left NotMeasured", "tennis right NotMeasured"],
            Ranges(both, "").Demands.Select(d => $"{d.Sport} {d.Side?.Word()} {d.Open}")
        );
    }

    [Theory]
    [InlineData("2027-07-01", null)]
    [InlineData("2027-07-02", DemandOpen.Old)]
    public void A_reading_is_good_for_180_days(string today, DemandOpen? open) =>
        Assert.Equal(
            open,
            Assert
                .Single(
                    Ranges(Practice, "2027-01-02,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,\n", today).Demands
                )
                .Open
        );

    /// <summary>Any way to measure what is trained will do for the training; the demand names its own.</summary>
    [Fact]
    public void What_is_demanded_or_trained_without_a_reading_is_named()
    {
        Assert.Equal(["lunge ankle dorsiflexion Left demanded trained"], Never(""));
        Assert.Equal(
            ["lunge ankle dorsiflexion Left demanded trained"],
            Never("2027-01-02,knee to wall,left,active,9,cm,tape,oq,1,\n")
        );
        Assert.Empty(Never("2027-01-02,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,\n"));
        var unasked = Practice.Edit("sports/epee.yaml", "motion: lunge ankle dorsiflexion", "motion: hip flexion");
        Assert.Equal(["hip flexion Left demanded"], Never("2027-01-02,knee to wall,left,active,9,cm,tape,oq,1,\n", unasked));

        static IEnumerable<string> Never(string lines, LittlePractice? practice = null) =>
            Ranges(practice ?? Practice, lines)
                .Never.Select(n =>
                    $"{string.Join(" or ", n.Ways.Select(w => w.Motion.Name))} {n.Side}{(n.Demand is null ? "" : " demanded")}"
                    + (n.IsTrained ? " trained" : "")
                );
    }

    /// <summary>The programme ends on 2027-01-31; its last week begins on 2027-01-25.</summary>
    [Theory]
    [InlineData("2027-01-31", "2027-01-02", null, null)]
    [InlineData("2027-02-01", "2027-01-02", null, DueWhy.ProgrammeOver)]
    [InlineData("2027-02-01", "2027-01-25", null, null)]
    [InlineData("2027-02-01", "2027-01-02", "2027-02-01", null)]
    [InlineData("2027-02-02", "2027-01-02", "2027-02-01", DueWhy.Retest)]
    [InlineData("2027-02-02", "2027-02-01", "2027-02-01", null)]
    [InlineData("2027-01-24", "2027-01-02", "3", null)]
    [InlineData("2027-01-25", "2027-01-02", "3", DueWhy.Retest)]
    [InlineData("2027-01-25", "2027-01-18", "3", null)]
    public void What_was_trained_is_due_when_its_time_is_past(string today, string read, string? retest, DueWhy? why)
    {
        var practice = retest is null
            ? Practice
            : Practice.Edit("clients/ada/programme.md", "weeks: 4\n", $"weeks: 4\nretest: {retest}\n");
        var due = Ranges(practice, $"{read},knee to wall,left,active,9,cm,tape,oq,1,\n", today).Due;
        Assert.Equal(why, due.Select(d => (DueWhy?)d.Why).SingleOrDefault());
    }

    [Fact]
    public void What_is_not_trained_is_due_only_when_it_is_old()
    {
        var line = "2027-01-02,hip flexion,right,active,110,deg,goniometer,oq,1,\n";
        Assert.Empty(Ranges(Practice, line, "2027-07-01").Due);
        Assert.Equal(DueWhy.Old, Assert.Single(Ranges(Practice, line, "2027-07-02").Due).Why);
    }

    /// <summary>What was read right after training tells nothing that could grow old, or that a demand is held against.</summary>
    [Fact]
    public void What_followed_training_is_never_due()
    {
        var line = "2026-01-02,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,training\n";
        var ranges = Ranges(Practice, line, "2027-07-02");
        Assert.Null(Assert.Single(ranges.Series).Latest);
        Assert.Empty(ranges.Due);
        Assert.Equal(DemandOpen.NotMeasured, Assert.Single(ranges.Demands).Open);
    }

    [Fact]
    public void More_is_no_gain_for_somebody_with_very_mobile_joints()
    {
        var lines =
            "2027-01-02,lunge ankle dorsiflexion,left,active,30,deg,inclinometer,oq,1,\n"
            + "2027-02-02,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,\n";
        var usual = Ranges(Practice, lines, "2027-03-01");
        Assert.Equal((false, ChangeWord.Gain), (usual.IsVeryMobile, usual.Series[0].SinceBaseline?.Word));
        var mobile = Ranges(
            Practice.Member(
                "ada",
                ["- use: calf-hold\n  side: left"],
                weeks: 4,
                answers: "{ calf-strain: no, very-mobile-joints: yes }"
            ),
            lines,
            "2027-03-01"
        );
        Assert.Equal((true, ChangeWord.More), (mobile.IsVeryMobile, mobile.Series[0].SinceBaseline?.Word));
    }

    [Fact]
    public void A_loss_from_a_day_to_the_next_is_not_hidden_in_a_mean()
    {
        var series = Ranges(
            Practice,
            "2027-01-20,lunge ankle dorsiflexion,left,active,40,deg,inclinometer,oq,1,\n"
                + "2027-01-22,lunge ankle dorsiflexion,left,active,30,deg,inclinometer,oq,1,\n",
            "2027-02-01"
        ).Series[0];
        Assert.Equal((35m, ChangeWord.Less), (series.Latest?.Value, series.Sudden?.Word));
    }

    /// <summary>No new edition for anybody because a reading came in, or a day to measure again.</summary>
    [Fact]
    public void Readings_change_nothing_that_is_asked_of_a_client()
    {
        var more = Practice
            .With("clients/ada/readings.csv", Header + "2027-01-02,knee to wall,left,active,9,cm,tape,oq,1,\n")
            .Edit("clients/ada/programme.md", "weeks: 4\n", "weeks: 4\nretest: 4\n");
        Assert.Equal(Hash(Practice), Hash(more));

        static string Hash(LittlePractice practice)
        {
            var read = practice.Read();
            return Training.Of(read, read.Clients[0]).Hash();
        }
    }

    private static string Sport(string name, string front, string rear) =>
        $"""
            name: {name}
            stance: Which hand?
            roles: {"{"} front leg: {front}, rear leg: {rear} {"}"}
            demands:
              - position: lunge
                motion: lunge ankle dorsiflexion
                side: rear leg
                mode: active
                at-least: 35
                because: The heel stays down.

            """;

    private static ClientRanges Ranges(LittlePractice files, string lines, string today = "2027-02-01")
    {
        var practice = files.With("clients/ada/readings.csv", Header + lines).Read();
        var client = practice.Clients.Single(c => c.Id.Text == "ada");
        return ClientRanges.Of(
            practice,
            client,
            Training.Of(practice, client),
            DateOnly.ParseExact(today, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
        );
    }
}
