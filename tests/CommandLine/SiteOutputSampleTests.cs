using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class SiteOutputSampleTests
{
    [Fact]
    public void The_sample_is_what_publishing_the_content_makes()
    {
        var folder = Directory.CreateTempSubdirectory("gradus-sample-").FullName;
        try
        {
            var answer = Gradus.Run(
                "publish",
                Repository.Path("content"),
                "--to",
                Path.Combine(folder, "site"),
                "--today",
                "2026-12-07"
            );
            Assert.Equal(0, answer.Status);
            var (made, kept) = (
                FolderBytes.Of(Path.Combine(folder, "site")),
                FolderBytes.Of(Repository.Path("site-output-sample"))
            );
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
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
