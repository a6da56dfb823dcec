using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class SiteOutputSampleTests(PublishedDemonstration published)
{
    [Fact]
    public void The_sample_is_what_publishing_the_content_makes()
    {
        var (made, kept) = (FolderBytes.Of(published.Read()), FolderBytes.Of(Repository.Path("site-output-sample")));
        var other = made
            .Keys.Union(kept.Keys)
            .Where(f => made.GetValueOrDefault(f) != kept.GetValueOrDefault(f))
            .Order(StringComparer.Ordinal)
            .ToArray();
        Assert.True(
            other.Length == 0,
            $"site-output-sample is not what publishing content makes now: {string.Join(", ", other)}.\n"
                + "Look at the difference; if it is meant, refresh the sample: dotnet run --project src/CommandLine "
                + "-- publish content --to site-output-sample"
        );
    }
}
