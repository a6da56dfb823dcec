using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a site may weigh is said on the page of the rule, in MiB: as much as a limit is not above it.</summary>
public sealed class SiteTooHeavyTests
{
    private const int MiB = 1024 * 1024;

    [Theory]
    [InlineData(10, 0, "")]
    [InlineData(10, 1, "note")]
    [InlineData(20, 0, "note")]
    [InlineData(20, 1, "warning")]
    [InlineData(60, 0, "warning")]
    [InlineData(60, 1, "error")]
    public void It_is_told_above_each_limit(int limit, int more, string level) =>
        Assert.Equal(level, string.Join(", ", Found(limit, more).Select(f => f.Level.ToString().ToLowerInvariant())));

    /// <summary>What weighs less than a tenth of one is not worth making smaller.</summary>
    [Fact]
    public void The_heavy_files_are_named()
    {
        var sentence = Assert.Single(Found(10, 1, ("wall.png", 110_000), ("mat.png", 100_000))).Sentence;
        Assert.Contains("'wall.png' 0.1 MiB", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("mat.png", sentence, StringComparison.Ordinal);
    }

    /// <param name="more">Bytes above the limit.</param>
    private static Finding[] Found(int limit, int more, params (string Path, int Bytes)[] beside)
    {
        var made = FinishedSite.Site;
        var assets = made.Assets.Concat(beside.Select(b => new Asset(b.Path, new byte[b.Bytes]))).ToArray();
        var weight = made.Pages.Sum(p => System.Text.Encoding.UTF8.GetByteCount(p.Html)) + assets.Sum(a => a.Bytes.Length);
        var clip = new Asset("clip.mp4", new byte[(limit * MiB) + more - weight]);
        return
        [
            .. FinishedSite.Audit(new(made.Client, made.Pages, [.. assets, clip])).Where(f => f.Rule.Text == "site-too-heavy"),
        ];
    }
}
