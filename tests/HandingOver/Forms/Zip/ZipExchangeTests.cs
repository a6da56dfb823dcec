using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class ZipExchangeTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_reader_never_misses_the_zip_and_never_sees_half_of_one()
    {
        using var reader = Watch(
            (site, target) => Publication.Write(site, target, new ZipForm()),
            publishes: 100,
            until: seen => seen.Torn > 0
        );

        Assert.True(reader.Rounds > 50, $"The reader looked only {reader.Rounds} times.");
        Assert.Equal(0, reader.Torn);
    }

    [Fact]
    public void The_reader_sees_a_zip_that_is_written_in_place()
    {
        using var reader = Watch(CarelessPublication.ZipInPlace, publishes: 5000, until: seen => seen.Torn > 0);

        Assert.NotEqual(0, reader.Torn);
    }

    [Fact]
    public void The_reader_sees_a_zip_that_is_removed_before_the_new_one_is_put_there()
    {
        void Write(Site site, string target)
        {
            using var held = TargetFolder.Open(target);
            ZipForm.Write(site, held, places =>
            {
                File.Delete(places.Site);
                NewFile.Put(places);
            });
        }

        using var reader = Watch(Write, publishes: 5000, until: seen => seen.Torn > 0);

        Assert.NotEqual(0, reader.Torn);
    }

    private ZipReader Watch(Action<Site, string> publish, int publishes, Predicate<ZipReader> until)
    {
        var target = folder["sites"];
        publish(ExampleSite.Long("odd"), target);
        var reader = new ZipReader(Path.Combine(target, "rufus.zip"));
        for (var n = 0; n < publishes && !until(reader); n++)
            publish(ExampleSite.Long(n % 2 == 0 ? "even" : "odd"), target);
        reader.Dispose();
        return reader;
    }
}
