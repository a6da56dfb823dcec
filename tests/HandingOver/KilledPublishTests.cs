using System.Diagnostics;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.HandingOver;

/// <summary>A publish is killed at moments that are chosen by chance, the same on every run; where in a publish each falls is up
/// to the machine. What a killed process has written is not lost, so the disk may be memory, which takes most kills near the step
/// that counts.</summary>
[Trait("Slow", "yes")]
public sealed class KilledPublishTests(ITestOutputHelper output) : IDisposable
{
    private static readonly int Kills = LongProof.Cases(200);
    private readonly TemporaryFolder folder = new(inMemory: true);

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("exchange", 1)]
    [InlineData("two renames", 2)]
    [InlineData("zip", 3)]
    public void A_killed_publish_leaves_one_whole_site_the_old_or_the_new(string how, ulong seed)
    {
        var kills = Kill(how, seed).Take(Kills).ToSeries();

        Show(how, kills);
        Assert.All(kills, kill => Assert.Contains(kill.Afterwards, (Standing[])[Standing.Old, Standing.New]));
        if (how != "two renames")
            Assert.All(kills, kill => Assert.Equal(kill.Afterwards, kill.AtOnce));
        Assert.All(kills.Where(kill => !kill.Inside), kill => Assert.Equal(Standing.New, kill.Afterwards));
        Assert.All(kills, kill => Assert.True(PublishedAgain(how, kill.Target).Changed));
        Assert.True(kills.Count(kill => kill.Inside) >= Kills / 4, "Too few kills fell inside a publish to prove anything.");
    }

    [Theory]
    [InlineData("cleared and written again", 4)]
    [InlineData("zip in place", 5)]
    public void A_careless_publish_is_seen_to_be_cut_off(string how, ulong seed)
    {
        var kills = new List<Killed>();
        foreach (var kill in Kill(how, seed).Take(200))
        {
            kills.Add(kill);
            if (kill.Afterwards is Standing.Torn or Standing.Nothing)
                break;
        }

        Show(how, kills.ToSeries());
        Assert.Contains(kills[^1].Afterwards, (Standing[])[Standing.Torn, Standing.Nothing]);
    }

    private IEnumerable<Killed> Kill(string how, ulong seed)
    {
        var chance = new Reading.Chance(seed);
        for (var n = 0; ; n++)
        {
            var target = folder[$"{how} {n}"];
            using var publishing = new PublishingProcess(how, target);
            WaitFor(publishing.WaitFor(publishes: 2) * chance.Below(10_000) / 1000);
            var (edition, finished) = publishing.Kill();
            var atOnce = StandingIn(target, how, edition);
            TargetFolder.Open(target).Dispose();
            Assert.Empty(TemporaryFolder.LeftoversIn(target));
            yield return new(target, !finished, atOnce, StandingIn(target, how, edition));
        }
    }

    /// <summary>More exactly than by sleeping, because a whole publish takes only a few milliseconds.</summary>
    private static void WaitFor(TimeSpan time)
    {
        for (var watch = Stopwatch.StartNew(); watch.Elapsed < time; )
            Thread.SpinWait(20);
    }

    private static PublicationResult PublishedAgain(string how, string target) =>
        how == "zip"
            ? Publication.Write(ExampleSite.Long("later"), target, new ZipForm())
            : Publication.Write(ExampleSite.Long("later"), target);

    private static Standing StandingIn(string target, string how, int edition)
    {
        var zip = how.StartsWith("zip", StringComparison.Ordinal);
        var place = Path.Combine(target, zip ? "rufus.zip" : "rufus");
        if (!Path.Exists(place))
            return Standing.Nothing;
        try
        {
            var site = zip ? new ZipForm().Read(place, ExampleSite.Rufus) : new FolderForm().Read(place, ExampleSite.Rufus);
            if (IsEdition(site, edition))
                return Standing.New;
            return IsEdition(site, edition - 1) ? Standing.Old : Standing.Torn;
        }
        catch (HandOverException)
        {
            return Standing.Torn;
        }
    }

    private static bool IsEdition(Site site, int edition) =>
        site.Pages.Equals(ExampleSite.Long(edition).Pages) && site.Assets.Count == 0;

    private void Show(string how, Series<Killed> kills)
    {
        output.WriteLine(
            $"{"how", -26} {"kills", 5}  {"inside a publish", 16}  {"old", 4} {"new", 4} {"torn", 4} {"none", 4}   none "
                + "before it was put right"
        );
        output.WriteLine(
            $"{how, -26} {kills.Count, 5}  {kills.Count(kill => kill.Inside), 16}  {Of(Standing.Old), 4} "
                + $"{Of(Standing.New), 4} {Of(Standing.Torn), 4} {Of(Standing.Nothing), 4}   "
                + kills.Count(kill => kill.AtOnce == Standing.Nothing)
        );

        int Of(Standing standing) => kills.Count(kill => kill.Afterwards == standing);
    }

    /// <summary>Which site stands. The new one is that of the publish that was begun last.</summary>
    private enum Standing
    {
        Nothing,
        Torn,
        Old,
        New,
    }

    /// <summary>What one kill came to.</summary>
    /// <param name="Inside">Whether it fell between the begin and the end of a publish.</param>
    /// <param name="AtOnce">What stood when the publish was dead.</param>
    /// <param name="Afterwards">What stood after the next start had put right what there was.</param>
    private sealed record Killed(string Target, bool Inside, Standing AtOnce, Standing Afterwards);
}
