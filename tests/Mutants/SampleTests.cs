namespace Gradus.Tests.Mutants;

public sealed class SampleTests
{
    private static readonly Sample Ten = new([("Room/Deep", 10), ("Room", 10)]);

    /// <summary>Published: Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17 (1998),
    /// table I, Wilson's score method without a correction (from memory).</summary>
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_spread_is_the_published_one(int hits, int drawn, double low, double high)
    {
        var spread = Sample.Spread(hits, drawn, int.MaxValue);
        Assert.Equal((low, high), (Math.Round(spread.Low, 4), Math.Round(spread.High, 4)));
    }

    [Fact]
    public void What_is_judged_whole_has_no_spread()
    {
        var (low, high) = Sample.Spread(9, 10, 10);
        Assert.Equal((0.9, 0.9), (Math.Round(low, 10), Math.Round(high, 10)));
    }

    [Fact]
    public void So_many_are_drawn_of_each_part_and_what_guards_comes_first()
    {
        var drawn = Ten.Of([.. Many("Room/Other/A.cs", 40), .. Many("Room/Deep/B.cs", 4), .. Many("Room/C.cs", 40)]).ToArray();
        Assert.Equal(["Room/Deep", "Room"], drawn.Select(m => Ten.PartOf(m.File)).Distinct());
        Assert.Equal((4, 10), (drawn.Count(m => m.Folder == "Room/Deep"), drawn.Count(m => m.Folder != "Room/Deep")));
    }

    [Fact]
    public void Of_one_part_fewer_may_be_drawn()
    {
        var fewer = new Sample([("Room/Deep", 3), ("Room", 10)]);
        var drawn = fewer.Of([.. Many("Room/Deep/B.cs", 40), .. Many("Room/C.cs", 40)]).ToArray();
        Assert.Equal((3, 10), (drawn.Count(m => m.Folder == "Room/Deep"), drawn.Count(m => m.Folder != "Room/Deep")));
    }

    [Fact]
    public void The_same_code_has_the_same_sample_wherever_it_stands()
    {
        var drawn = Ten.Of([.. Many("Room/C.cs", 40)]).Select(m => m.Name).ToArray();
        var below = Ten.Of([.. Many("Room/C.cs", 40).Reverse().Select(m => m with { Line = m.Line + 7, Id = m.Id + 90 })]);
        Assert.Equal(drawn, below.Select(m => m.Name));
        Assert.NotEqual(Many("Room/C.cs", 10).Select(m => m.Name), drawn.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<Mutant> Many(string file, int count) =>
        Enumerable.Range(1, count).Select(i => new Mutant(i, file, i, 1, $"M{i:00}", "constant", "1 → 2", i));
}
