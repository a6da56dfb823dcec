using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed partial class RangesCommandTests : IDisposable
{
    private static readonly string Content = Repository.Path("content");

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-ranges-").FullName;

    [Fact]
    public void Numbers_without_an_error_stand_side_by_side()
    {
        var (status, output, error) = Gradus.Run("ranges", Content, "--client", "rufus", "--today", "2026-12-01");
        Assert.Equal((0, ""), (status, error));
        Assert.StartsWith("Rufus Elphick: measured until 2026-12-01; ", output, StringComparison.Ordinal);
        Assert.Contains(
            "  thoracic rotation, right, active, inclinometer: baseline 40° on 2026-11-20\n    since the time before: 7° more "
                + "than on 2026-09-11; no published error for this measure; the numbers stand side by side and are not judged.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  Épée fencing, lunge, rear leg (right), lying ankle dorsiflexion, passive, at least 15°: 11° on 2026-11-20: no "
                + "published error for this measure, not judged.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains("  thoracic rotation, left: trained\n", output, StringComparison.Ordinal);
        Assert.Contains("A demand is a mark set by the coach; no study stands behind it.\n", output, StringComparison.Ordinal);
    }

    /// <summary>The begun practice starts today. Three tries before it and three ten weeks later, 7 degrees more with an error of
    /// 5.6; a knee that lost 3 cm with one of 1.9; a lunge 1 degree up with one of 4.7.</summary>
    [Fact]
    public void What_may_be_said_is_said_in_plain_words()
    {
        var output = Run(
            "hip internal rotation,left,active,28,deg,inclinometer,,1",
            "-10 thoracic rotation,left,active,33,deg,inclinometer,hb,3",
            "70 thoracic rotation,left,active,40,deg,inclinometer,hb,3",
            "-10 knee to wall,left,active,10,cm,tape,hb,3",
            "70 knee to wall,left,active,7,cm,tape,hb,3",
            "-10 lunge ankle dorsiflexion,left,active,38,deg,inclinometer,hb,3",
            "70 lunge ankle dorsiflexion,left,active,39,deg,inclinometer,hb,3"
        );
        Assert.Contains(
            "Of 3 comparisons about one in twenty goes beyond its error by chance.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"7° more than on {Day(-10)}; the error of this measure is 5.6°, so the true change "
                + "lies somewhere between 1 and 13°.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"3 cm less than on {Day(-10)}, beyond the error of 1.9 cm. Measure again; ask about pain, swelling, a new injury.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"1° more than on {Day(-10)}; a difference below 4.7° is within the error: no change that this measure can show.\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "    error: Johnson KD 2012, J Athl Train 47(1):52-60; level not stated, active, ",
            output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Programs_get_the_same_figures()
    {
        var answer = Gradus.Run("ranges", Content, "--client", "rufus", "--today", "2026-12-01", "--format", "json");
        var client = Assert.Single(JsonDocument.Parse(answer.Output).RootElement.GetProperty("clients").EnumerateArray());
        var chest = client
            .GetProperty("series")
            .EnumerateArray()
            .Single(s => s.GetProperty("motion").GetString() == "thoracic rotation");
        var change = chest.GetProperty("sinceBefore");
        Assert.Equal(
            ("right", 7m, "not-judged", JsonValueKind.Null),
            (
                chest.GetProperty("side").GetString(),
                change.GetProperty("difference").GetDecimal(),
                change.GetProperty("word").GetString(),
                change.GetProperty("margin").ValueKind
            )
        );
        Assert.Equal(7, client.GetProperty("demands").GetArrayLength());
    }

    [Fact]
    public void A_client_who_cannot_be_read_is_named()
    {
        Begin();
        var path = Path.Combine(folder, "practice", "clients", "perrin", "client.yaml");
        File.WriteAllText(path, "name: [\n");
        var answer = Gradus.Run("ranges", Path.Combine(folder, "practice"));
        Assert.Equal(1, answer.Status);
        Assert.Contains("perrin cannot be read; 'gradus audit", answer.Error, StringComparison.Ordinal);
    }

    /// <summary>What must never be said of a reading.</summary>
    [GeneratedRegex(
        @"improv|progress|deficit|imbalance|asymmetr|abnormal|\bnormal\b|\brisk|\bfault\b|\bbest\b|\brank|should be equal"
            + @"|you have lost|stayed the same|because of the programme|thanks to|\btrend|forecast|average person|[0-9] ?%"
            + @"|[0-9] per cent (more|less|of (the )?(range|demand|change))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex NeverSaid();

    [Fact]
    public void What_must_never_be_said_is_nowhere_said()
    {
        var made = Run([
            .. from day in new[] { -60, -10, -8, 20, 70 }
            from motion in new[] { "thoracic rotation", "lunge ankle dorsiflexion", "hip internal rotation" }
            from side in new[] { "left", "right" }
            select string.Create(
                CultureInfo.InvariantCulture,
                $"{day} {motion},{side},active,{Made(day, motion, side)},deg,inclinometer,hb,3"
            ),
        ]);
        foreach (var word in new[] { " more than", " less than", "no change", "differ by", "no difference" })
            Assert.Contains(word, made, StringComparison.Ordinal);
        var texts = new[] { "text", "json" }
            .Select(format => Gradus.Run("ranges", Content, "--format", format, "--today", "2027-02-01").Output)
            .Append(made);
        Assert.All(texts, text => Assert.Empty(NeverSaid().Matches(text).Select(m => m.Value)));
    }

    [Theory]
    [InlineData("It improved by 1°.")]
    [InlineData("12 % more")]
    [InlineData("No progress.")]
    [InlineData("Your best value")]
    [InlineData("outside the normal range")]
    public void A_word_that_must_never_be_said_would_be_found(string text) => Assert.Matches(NeverSaid(), text);

    /// <summary>One side that rises, one that falls, and a measure in which nothing can be shown.</summary>
    private static int Made(int day, string motion, string side) =>
        (motion, side) switch
        {
            _ when day <= 0 => 40,
            ("thoracic rotation", "left") => 55,
            ("thoracic rotation", _) => 25,
            ("lunge ankle dorsiflexion", _) => 41,
            _ => 50,
        };

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <param name="readings">Each with the day before it, counted from the first of the programme.</param>
    private string Run(params string[] readings)
    {
        Begin();
        var text = new StringBuilder("date,motion,side,mode,value,unit,instrument,by,trials\n");
        foreach (var reading in readings)
        {
            var dated = DayBefore().Match(reading);
            var day = dated.Groups[1].Success ? int.Parse(dated.Groups[1].Value, CultureInfo.InvariantCulture) : 0;
            text.Append(CultureInfo.InvariantCulture, $"{Day(day)},{dated.Groups[2].Value}\n");
        }

        File.WriteAllText(Path.Combine(folder, "practice", "clients", "perrin", "readings.csv"), text.ToString());
        var (status, output, error) = Gradus.Run("ranges", Path.Combine(folder, "practice"), "--today", Day(90));
        Assert.Equal((0, ""), (status, error));
        return output;
    }

    [GeneratedRegex(@"\A(?:(-?[0-9]+) )?(.*)\z", RegexOptions.CultureInvariant)]
    private static partial Regex DayBefore();

    private void Begin() => Gradus.Run("begin", Path.Combine(folder, "practice"));

    /// <summary>A day of the begun practice, whose programme's first day is read from its file.</summary>
    private string Day(int after)
    {
        var programme = File.ReadAllText(Path.Combine(folder, "practice", "clients", "perrin", "programme.md"));
        var start = programme.Split('\n').Single(l => l.StartsWith("start:", StringComparison.Ordinal))["start:".Length..].Trim();
        return DateOnly
            .ParseExact(start, "yyyy-MM-dd", CultureInfo.InvariantCulture)
            .AddDays(after)
            .ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }
}
