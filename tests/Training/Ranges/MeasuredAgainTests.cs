using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is said of a range that was measured again. The left ankle is stretched for two weeks from 2027-01-04, the neck
/// too; the error of "knee to wall" is 1.9 cm (Powden 2015, Man Ther 20:524-32: in motions.yaml).</summary>
public sealed class MeasuredAgainTests
{
    private const string Head = "date,motion,side,mode,value,unit,instrument,by,trials";

    /// <summary>More is a gain where it was worked on between the two, for whom more is the aim.</summary>
    [Theory]
    [InlineData("left", 14, "no", "Gain")]
    [InlineData("left", 11, "no", "NotShown")]
    [InlineData("left", 6, "no", "Less")]
    [InlineData("right", 14, "no", "More")]
    [InlineData("left", 14, "yes", "More")]
    public void More_is_a_gain_where_it_was_worked_on(string side, int now, string mobile, string word)
    {
        var ranges = Of(
            $"calf-strain: no, very-mobile-joints: {mobile}",
            Read("2026-12-20", side, 10),
            Read("2027-02-01", side, now)
        );
        Assert.Equal([word], Assert.Single(ranges.Series).Changes.Select(c => c.Word.ToString()));
        Assert.Equal(1, ranges.Comparisons);
    }

    /// <summary>The last pair before the programme is what the latest is held against.</summary>
    [Theory]
    [InlineData("2026-11-01 2026-12-20 2027-02-01", "2027-02-01", "2026-12-20")]
    [InlineData("2026-12-20 2027-02-01", "2027-02-01", "2026-12-20")]
    [InlineData("2027-01-04 2027-02-01", "2027-02-01", "2027-01-04")]
    [InlineData("2026-12-20", "2026-12-20", "")]
    public void Left_and_right_are_compared_with_the_last_pair_before_the_programme(string days, string latest, string before)
    {
        var read = days.Split(' ').SelectMany((day, i) => new[] { Read(day, "left", 9 + i), Read(day, "right", 12) });
        var sides = Assert.Single(Of("calf-strain: no", [.. read]).Sides);
        Assert.Equal(latest, $"{sides.Latest.First:yyyy-MM-dd}");
        Assert.Equal(before, $"{sides.Change?.From.First:yyyy-MM-dd}");
        Assert.Equal(8 + days.Split(' ').Length - 12, sides.Latest.Difference);
    }

    [Fact]
    public void Left_and_right_of_different_occasions_are_not_compared()
    {
        Assert.Empty(Of("calf-strain: no", Read("2026-10-01", "left", 9), Read("2026-12-20", "right", 12)).Sides);
        Assert.Empty(Of("calf-strain: no", Read("2026-12-20", "right", 12)).Sides);
    }

    /// <summary>Where the other side was read twice within a week of it, the later one counts.</summary>
    [Fact]
    public void Left_is_compared_with_the_right_that_was_read_last_beside_it() =>
        Assert.Equal(
            9 - 14,
            Assert
                .Single(
                    Of(
                        "calf-strain: no",
                        Read("2026-12-05", "left", 9),
                        Read("2026-12-01", "right", 12),
                        Read("2026-12-08", "right", 14)
                    ).Sides
                )
                .Latest.Difference
        );

    /// <summary>The programme's last day is 2027-01-17.</summary>
    [Theory]
    [InlineData("2027-01-17", "Gain")]
    [InlineData("2027-01-18", "More")]
    public void Work_up_to_the_day_of_the_first_reading_counts(string day, string word) =>
        Assert.Equal(
            word,
            $"{Of("calf-strain: no", Read(day, "left", 10), Read("2027-02-03", "left", 14)).Series[0].SinceBefore?.Word}"
        );

    /// <summary>Published: 1.9 cm for one rater, 1.6 for two (Powden 2015, as above).</summary>
    [Theory]
    [InlineData("om", 1.9)]
    [InlineData("hq", 1.6)]
    public void Who_read_it_decides_the_error(string second, double error)
    {
        var ranges = Of(
            "calf-strain: no",
            Read("2026-12-20", "left", 10),
            Read("2026-12-20", "right", 12).Replace(",om,", $",{second},", StringComparison.Ordinal),
            Read("2027-02-01", "left", 14).Replace(",om,", $",{second},", StringComparison.Ordinal)
        );
        Assert.Equal(error, (double)Math.Round(ranges.Series[0].SinceBaseline?.Error?.Change ?? 0, 3));
        Assert.Equal(error, (double)Math.Round(Assert.Single(ranges.Sides).Latest.Error?.Change ?? 0, 3));
    }

    /// <summary>Nobody has published an error of what is read at home; three days before the programme give an own one.</summary>
    [Theory]
    [InlineData("2026-12-20 2026-12-22", "NotJudged")]
    [InlineData("2026-12-20 2026-12-22 2026-12-24", "Gain")]
    public void At_home_three_days_give_an_error(string days, string word)
    {
        var read = days.Split(' ').Select(day => Read(day, "left", 10)).Append(Read("2027-02-01", "left", 14));
        var ranges = Of("calf-strain: no", [.. read.Select(r => r.Replace("tape", "tape at home", StringComparison.Ordinal))]);
        Assert.Equal(word, $"{ranges.Series[0].SinceBaseline?.Word}");
    }

    /// <summary>Two series with a change each, and what is said of their sides.</summary>
    [Fact]
    public void Every_comparison_is_counted() =>
        Assert.Equal(
            4,
            Of(
                "calf-strain: no",
                Read("2026-12-20", "left", 10),
                Read("2026-12-20", "right", 10),
                Read("2027-02-01", "left", 14),
                Read("2027-02-01", "right", 10)
            ).Comparisons
        );

    /// <summary>The programme is over, and nothing was read in its last week or later; of what nothing trains that is not
    /// asked.</summary>
    [Theory]
    [InlineData("2026-12-20", "left", "ProgrammeOver")]
    [InlineData("2027-01-10", "left", "ProgrammeOver")]
    [InlineData("2027-01-11", "left", "")]
    [InlineData("2026-12-20", "right", "")]
    [InlineData("2026-08-05", "right", "Old")]
    public void After_the_programme_it_is_measured_again(string day, string side, string why) =>
        Assert.Equal(why, string.Join(", ", Of("calf-strain: no", Read(day, side, 10)).Due.Select(d => d.Why)));

    /// <summary>Whatever measured, the one that was read last counts.</summary>
    [Fact]
    public void The_demand_is_held_against_what_was_read_last()
    {
        var ranges = Of(
            "calf-strain: no",
            Read("2026-12-20", "left", 8),
            Read("2026-12-01", "left", 13).Replace("tape", "goniometer", StringComparison.Ordinal)
        );
        Assert.Equal(8, Assert.Single(ranges.Demands, d => d.Side == Side.Left).Mark?.Read.Value);
    }

    /// <summary>What may be chosen instead is not planned, and what strengthens gains nothing.</summary>
    [Theory]
    [InlineData("gain", "ankle dorsiflexion, cervical flexion")]
    [InlineData("strengthen", "cervical flexion")]
    public void What_is_gained_is_what_the_programme_s_own_sessions_gain(string stage, string gained)
    {
        var practice = Made().Edit("exercises/bend.md", "stage: gain", $"stage: {stage}").Read();
        var client = practice.Clients[0];
        var training = Training.Of(practice, client);
        Assert.Equal(
            gained,
            string.Join(", ", ClientRanges.Of(practice, client, training, new(2027, 2, 5)).Gained.Select(m => m.Name))
        );
        Assert.DoesNotContain(PlannedWork.Of(client, training), w =>
            w.Side == Side.Right && w.Motion.Name == "ankle dorsiflexion"
        );
    }

    private static string Read(string day, string side, int value) => $"{day},knee to wall,{side},active,{value},cm,tape,om,1";

    private static ClientRanges Of(string answers, params string[] read)
    {
        var practice = Made(answers).With("clients/ada/readings.csv", $"{Head}\n{string.Join('\n', read)}\n").Read();
        var client = practice.Clients[0];
        return ClientRanges.Of(practice, client, Training.Of(practice, client), new(2027, 2, 5));
    }

    private static LittlePractice Made(string answers = "calf-strain: no") =>
        Club
            .Empty.Exercise("bend", "2 x hold 30 s, each side", position: "supine")
            .Exercise("nod", "2 x hold 30 s, each side", position: "supine", trains: "cervical flexion")
            .With(
                "sports/epee.yaml",
                "name: Épée fencing\nstance: Which hand holds the weapon?\nroles: { rear leg: left }\n"
                    + "demands: [{ position: lunge, motion: knee to wall, mode: active, at-least: 9, because: Reach. }]\n"
            )
            .Member("ada", ["- use: bend\n  side: left\n- use: nod"], weeks: 2, answers: $"{{ {answers} }}")
            .Edit(
                "clients/ada/programme.md",
                "sessions:",
                "alternate: [{ name: Away, instead-of: Session 1, kind: travel, do: [{ use: bend, side: right }] }]\nsessions:"
            );
}
