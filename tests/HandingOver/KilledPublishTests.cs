using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class KilledPublishTests : IDisposable
{
    private const int Kills = 12;
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_killed_publish_leaves_the_old_site_or_the_new_one_whole()
    {
        var cutOff = 0;
        for (var n = 0; n < Kills; n++)
        {
            var target = KilledAfter("exchange", n);

            Assert.True(IsWhole(target), $"After kill {n} the site is neither edition.");
            if (TemporaryFolder.LeftoversIn(target).Any()) cutOff++;
            Publication.Write(ExampleSite.Long("later"), target);
            Assert.Equal(ExampleSite.Long("later").Files(), ExampleSite.FilesIn(Path.Combine(target, "rufus")));
            Assert.Empty(TemporaryFolder.LeftoversIn(target));
        }
        Assert.True(cutOff > 0, "No kill fell into a publish.");
    }

    [Fact]
    public void A_publish_killed_between_two_renames_is_whole_again_at_the_next_start()
    {
        for (var n = 0; n < Kills; n++)
        {
            var target = KilledAfter("two renames", n);

            TargetFolder.Open(target).Dispose();

            Assert.True(IsWhole(target), $"After kill {n} the site is neither edition.");
            Assert.Empty(TemporaryFolder.LeftoversIn(target));
        }
    }

    [Fact]
    public void A_careless_publish_is_seen_to_be_cut_off()
    {
        var seen = Enumerable.Range(0, 60).Any(n => !IsWhole(KilledAfter("careless", n)));

        Assert.True(seen);
    }

    private string KilledAfter(string how, int n)
    {
        var target = folder[$"{how} {n}"];
        using var publishing = new PublishingProcess(how, target);
        Thread.Sleep(7 + n % Kills * 3);
        publishing.Kill();
        return target;
    }

    private static bool IsWhole(string target)
    {
        var site = Path.Combine(target, "rufus");
        if (!Directory.Exists(site)) return false;
        var files = ExampleSite.FilesIn(site);
        return ((string[])["even", "odd"]).Any(edition => ExampleSite.Long(edition).Files().OrderBy(f => f.Key).SequenceEqual(files.OrderBy(f => f.Key)));
    }
}
