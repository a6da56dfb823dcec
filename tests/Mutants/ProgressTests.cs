namespace Gradus.Tests.Mutants;

public sealed class ProgressTests
{
    private static readonly Mutant Mutant = new(1, "Room/A.cs", 3, 5, "Is", "constant", "1 → 2", 1);

    private readonly string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());

    [Fact]
    public void A_run_that_was_cut_off_goes_on_from_there()
    {
        new Progress(path, "build").Add(new(Mutant, Fate.Killed, "ATests.Is(a\nb)"), 7);
        var next = new Progress(path, "build");
        Assert.Equal(Fate.Killed, next.Before(Mutant)?.Fate);
        Assert.Null(next.Before(Mutant with { Column = 6 }));
    }

    [Fact]
    public void Built_anew_it_says_only_which_test_to_ask_first()
    {
        new Progress(path, "build").Add(new(Mutant, Fate.Killed, "ATests.Is(a\nb)"), 7);
        foreach (var build in (string[])["another", "another", "a third"])
        {
            var next = new Progress(path, build);
            Assert.Null(next.Before(Mutant));
            Assert.Equal("ATests.Is(a b)", next.First(Mutant with { Line = 9 }));
        }
    }

    [Fact]
    public void What_is_cut_off_in_a_line_is_judged_anew()
    {
        new Progress(path, "build").Add(new(Mutant, Fate.Survived, ""), 7);
        File.AppendAllText(path, "Killed\t3:5 Room/B.cs");
        Assert.Equal(Fate.Survived, new Progress(path, "build").Before(Mutant)?.Fate);
        Assert.Null(new Progress(path, "build").Before(Mutant with { File = "Room/B.cs" }));
    }
}
