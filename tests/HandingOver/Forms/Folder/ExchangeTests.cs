using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class ExchangeTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_reader_never_misses_a_page_and_never_sees_two_editions_together()
    {
        using var reader = Watch(Write, publishes: 50, until: _ => false);

        Assert.True(reader.Rounds > 50, $"The reader looked only {reader.Rounds} times.");
        Assert.Equal(0, reader.Missing);
        Assert.Equal(0, reader.Mixed);
    }

    [Fact]
    public void The_reader_sees_a_folder_that_is_cleared_and_written_again()
    {
        using var reader = Watch(CarelessPublication.ClearAndWrite, publishes: 2000, until: seen => seen.Missing > 0);

        Assert.NotEqual(0, reader.Missing);
    }

    [Fact]
    public void The_reader_sees_pages_that_are_exchanged_one_by_one()
    {
        using var reader = Watch(CarelessPublication.FileByFile, publishes: 5000, until: seen => seen.Mixed > 0);

        Assert.NotEqual(0, reader.Mixed);
    }

    [Fact]
    public void The_reader_sees_the_moment_between_two_renames()
    {
        void Write(Site site, string target)
        {
            using var held = TargetFolder.Open(target);
            FolderForm.Write(site, held, Exchange.PutByTwoRenames);
        }

        using var reader = Watch(Write, publishes: 2000, until: seen => seen.Missing > 0);

        Assert.NotEqual(0, reader.Missing);
        Assert.Equal(0, reader.Mixed);
    }

    [Fact]
    public void Two_renames_publish_the_same_as_the_exchange()
    {
        using var target = TargetFolder.Open(folder["sites"]);
        foreach (var edition in (string[])["first", "second", "third"])
        {
            FolderForm.Write(ExampleSite.Edition(edition), target, Exchange.PutByTwoRenames);

            Assert.Equal(ExampleSite.Edition(edition).Files(), ExampleSite.FilesIn(folder["sites/rufus"]));
            Assert.Empty(TemporaryFolder.LeftoversIn(target.Root));
        }
    }

    private static void Write(Site site, string target) => Publication.Write(site, target);

    private FolderReader Watch(Action<Site, string> publish, int publishes, Predicate<FolderReader> until)
    {
        var target = folder["sites"];
        publish(ExampleSite.Edition("odd"), target);
        var reader = new FolderReader(Path.Combine(target, "rufus"));
        for (var n = 0; n < publishes && !until(reader); n++)
            publish(ExampleSite.Edition(n % 2 == 0 ? "even" : "odd"), target);
        reader.Dispose();
        return reader;
    }
}
