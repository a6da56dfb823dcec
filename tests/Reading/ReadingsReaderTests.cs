using System.Diagnostics;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Reading;

/// <summary>What coaches and their spreadsheets make of readings.csv.</summary>
public sealed class ReadingsReaderTests(ITestOutputHelper output)
{
    private const string Path = "clients/ansel/readings.csv";
    private const string Header = "date,motion,side,mode,value,unit,instrument,by,trials,after\n";

    [Fact]
    public void Columns_are_found_by_their_names()
    {
        var usual = Read(
            "date,motion,side,mode,value,unit,instrument,by,trials,after\n2026-11-20,knee to "
                + "wall,left,active,9.5,cm,tape,oq,3,rest\n"
        );
        var other = Read(
            "after,trials,unit,value,by,instrument,mode,side,motion,date\nrest,3,cm,9.5,oq,"
                + "tape,active,left,knee to wall,2026-11-20\n"
        );
        var reading = Assert.Single(usual);
        Assert.Equal(reading, Assert.Single(other));
        Assert.Equal(("oq", 3, false), (reading.By, reading.Trials, reading.IsAfterTraining));
    }

    [Fact]
    public void The_added_columns_may_be_empty_or_missing()
    {
        var reading = Assert.Single(Read(Header + "2026-11-20,knee to wall,left,active,9.5,cm,tape,,,\n"));
        Assert.Equal((null, 1, false), (reading.By, reading.Trials, reading.IsAfterTraining));
        Assert.Single(Read("date,motion,side,mode,value,unit,instrument\n2026-11-20,knee to wall,left,active,9.5,cm,tape\n"));
    }

    [Theory]
    [InlineData("-5", "-5")]
    [InlineData("-0.5", "-0.5")]
    [InlineData("0", "0")]
    public void A_joint_that_stays_below_its_zero_is_read(string written, string value) =>
        Assert.Equal(
            value,
            $"{Assert.Single(Read(Header + $"2026-11-20,knee extension,left,passive,{written},deg,goniometer,,,\n")).Value}"
        );

    [Fact]
    public void A_reading_after_training_says_so() =>
        Assert.True(
            Assert.Single(Read(Header + "2026-11-20,knee to wall,left,active,9.5,cm,tape,oq,3,training\n")).IsAfterTraining
        );

    [Theory]
    [InlineData("date,motion,side,mode,value,unit\n", "The column 'instrument' is missing.")]
    [InlineData("date,motion,side,mode,value,unit,instrument,date\n", "The column 'date' is named twice.")]
    [InlineData(
        "date;motion;side;mode;value;unit;instrument\n",
        "The first line does not name the columns of readings: there is no column 'date;motion;side;mode;value;unit;instrument'."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,9.5,cm,tape\n",
        "The first line does not name the columns of readings: there is no column '2026-11-20'."
    )]
    public void A_first_line_that_does_not_name_the_columns_is_said(string text, string message) =>
        Assert.Equal(message, Said(text).Message);

    [Theory]
    [InlineData(
        "2026-11-20,knee to wall,left,active,3.5,in,tape,,,",
        "'knee to wall' is measured in cm, but here is 'in'.",
        "Write cm, and the value in it: an inch is 2.54 cm."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,35,mm,tape,,,",
        "'knee to wall' is measured in cm, but here is 'mm'.",
        "Write cm, and the value in it: an inch is 2.54 cm."
    )]
    [InlineData(
        "2026-11-20,hip flexion,left,active,110,°,goniometer,,,",
        "'hip flexion' is measured in deg, but here is '°'.",
        "Write deg, and the value in it."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,9,5,cm,tape,,,",
        "This line has 11 columns; a reading has 10.",
        "Write date, motion, side, mode, value, unit, instrument, by, trials, after, "
            + "with commas between them and a point before decimals."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,\"9,5\",cm,tape,,,",
        "'9,5' is no number.",
        "Write digits only, with a point before decimals and no zero in front: 15 or 4.5; -5 where it stays below zero."
    )]
    [InlineData(
        "2026-11-20,hip flexion,left,active,320,deg,goniometer,,,",
        "320 deg of hip flexion cannot be: nobody is outside -20 to 170.",
        "Look up what was read and write that, or take the line out."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,95,cm,tape,,,",
        "95 cm of knee to wall cannot be: nobody is outside -10 to 30.",
        "Look up what was read and write that, or take the line out."
    )]
    [InlineData(
        "2026-11-20,ankle dorsiflexion,left,passive,12,deg,inclinometer,,,",
        "'ankle dorsiflexion' is measured in 3 ways that do not compare.",
        "Write which one: knee to wall, lunge ankle dorsiflexion, lying ankle dorsiflexion."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,9,cm,tape,,0,",
        "'0' is no number of tries.",
        "Write a whole number from 1 to 10: of how many tries the value is the mean."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,9,cm,tape,,1.5,",
        "'1.5' is no number of tries.",
        "Write a whole number from 1 to 10: of how many tries the value is the mean."
    )]
    [InlineData(
        "2026-11-20,knee to wall,left,active,9,cm,tape,,,traning",
        "'traning' cannot stand here.",
        "Did you mean 'training'?"
    )]
    public void A_wrong_line_is_said_with_its_remedy(string line, string message, string help)
    {
        var finding = Said(Header + line + "\n");
        Assert.Equal((message, help), (finding.Message, finding.Help));
        Assert.Equal((Level.Error, 2), (finding.Level, finding.At.Line));
    }

    [Fact]
    public void What_is_trained_is_the_motion_and_not_a_way_to_measure_it()
    {
        var path =
            "exercises/" + LittlePractice.Golden.Read().Exercises.First(e => e.Trains.Name == "ankle dorsiflexion").Id + ".md";
        var finding = Assert.Single(
            LittlePractice.Golden.Edit(path, "trains: ankle dorsiflexion", "trains: knee to wall").Findings(),
            f => f.At.File == path
        );
        Assert.Equal("'knee to wall' is a way to measure ankle dorsiflexion.", finding.Message);
        Assert.StartsWith("Write ankle dorsiflexion", finding.Help, StringComparison.Ordinal);
    }

    /// <summary>Instruments are never mixed, and neither are modes; the order of the days does not matter.</summary>
    [Fact]
    public void Mixed_instruments_are_series_of_their_own_and_days_may_stand_in_any_order()
    {
        string[] lines =
        [
            "2026-11-20,hip flexion,left,active,110,deg,goniometer,,,\n",
            "2026-09-20,hip flexion,left,active,100,deg,goniometer,,,\n",
            "2026-10-20,hip flexion,left,active,105,deg,Goniometer,,,\n",
            "2026-11-20,hip flexion,left,active,118,deg,inclinometer,,,\n",
            "2026-11-20,hip flexion,left,passive,121,deg,goniometer,,,\n",
        ];
        var series = RangeSeries.Of(Read(Header + string.Concat(lines)), DateOnly.MaxValue);
        Assert.Equal(
            ["Active goniometer 100 105 110", "Active inclinometer 118", "Passive goniometer 121"],
            series.Select(s => $"{s.Key.Mode} {s.Key.Instrument} {string.Join(' ', s.Days.Select(d => d.Value))}")
        );
        var turned = RangeSeries.Of(Read(Header + string.Concat(lines.Reverse())), DateOnly.MaxValue);
        Assert.Equal(series.SelectMany(s => s.Occasions), turned.SelectMany(s => s.Occasions));
    }

    /// <summary>Ten thousand readings of one client: thirty years of a very busy one.</summary>
    [Fact]
    public void Ten_thousand_readings_are_read_and_put_in_order_at_once()
    {
        var text = new StringBuilder(Header);
        for (var i = 0; i < 10_000; i++)
            text.Append(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{new DateOnly(2000, 1, 1).AddDays(i / 2):yyyy-MM-dd},hip flexion,"
                    + $"{(i % 2 == 0 ? "left" : "right")},active,{100 + (i % 20)},deg,goniometer,oq,3,\n"
            );
        var practice = LittlePractice.Golden.With(Path, text.ToString());
        practice.Read();
        var watch = Stopwatch.StartNew();
        var series = RangeSeries.Of(practice.Client("ansel").Readings, DateOnly.MaxValue);
        output.WriteLine($"10,000 readings in {watch.ElapsedMilliseconds} ms, {series.Sum(s => s.Occasions.Count)} occasions");
        Assert.Equal(10_000, series.Sum(s => s.Days.Count()));
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"It took {watch.Elapsed}.");
    }

    private static Series<RangeReading> Read(string text) => LittlePractice.Golden.With(Path, text).Client("ansel").Readings;

    private static Finding Said(string text) => Assert.Single(LittlePractice.Golden.With(Path, text).Findings());
}
