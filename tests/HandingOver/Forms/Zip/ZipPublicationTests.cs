using System.IO.Compression;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class ZipPublicationTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string Target => folder["sites/of/the/gym"];

    private string Zip => Path.Combine(Target, "rufus.zip");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_first_publish_puts_every_file_under_one_folder_named_by_the_client()
    {
        var site = ExampleSite.Edition("first");

        var result = Publication.Write(site, Target, new ZipForm());

        Assert.Equal(site.FilesAsInZip(), ExampleSite.FilesInZip(Zip));
        Assert.Equal(ExampleSite.FilesInZip(Zip).Keys.Order(StringComparer.Ordinal), ExampleSite.FilesInZip(Zip).Keys);
        Assert.Equal(Zip, result.Place);
        Assert.True(result.Changed);
        Assert.Equal(7, result.Written.Count);
        Assert.Empty(result.Untouched);
        Assert.Empty(result.Removed);
        Assert.Equal(6, result.Pages);
        Assert.Equal(site.Files().Values.Sum(hex => hex.Length / 2), result.Bytes);
        Assert.Equal(
            ["rufus.zip"],
            Directory
                .EnumerateFileSystemEntries(Target)
                .Select(path => Path.GetFileName(path))
                .Where(name => name != ".gradus-lock")
        );
    }

    [Fact]
    public void Publishing_the_same_again_touches_nothing_at_all()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        var before = DiskState.Of(Target);

        var result = Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());

        Assert.False(result.Changed);
        Assert.Empty(result.Written);
        Assert.Equal(7, result.Untouched.Count);
        Assert.Equal(before, DiskState.Of(Target));
    }

    [Fact]
    public void Writing_the_same_zip_over_the_old_would_be_seen()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        var before = DiskState.Of(Target);

        File.WriteAllBytes(Zip, File.ReadAllBytes(Zip));

        Assert.NotEqual(before, DiskState.Of(Target));
    }

    [Fact]
    public void What_changed_inside_is_named_and_the_whole_zip_is_new()
    {
        Publication.Write(ExampleSite.Edition("2 x hold 30 s"), Target, new ZipForm());
        var site = ExampleSite.Edition("3 x hold 30 s").Without("progress.html");

        var result = Publication.Write(site, Target, new ZipForm());

        Assert.True(result.Changed);
        Assert.Equal(["index.html", "session-1.html"], result.Written);
        Assert.Equal(4, result.Untouched.Count);
        Assert.Equal(["progress.html"], result.Removed);
        Assert.Equal(site.FilesAsInZip(), ExampleSite.FilesInZip(Zip));
    }

    [Fact]
    public void A_zip_of_the_same_files_with_other_dates_is_replaced()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        var ours = File.ReadAllBytes(Zip);
        HandMadeZip.PackAnew(Zip, CompressionLevel.NoCompression);
        Assert.NotEqual(ours, File.ReadAllBytes(Zip));

        var result = Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());

        Assert.True(result.Changed);
        Assert.Empty(result.Written);
        Assert.Equal(7, result.Untouched.Count);
        Assert.Equal(ours, File.ReadAllBytes(Zip));
    }

    [Fact]
    public void Folder_and_zip_stand_beside_each_other_and_leave_each_other_alone()
    {
        Publication.Write(ExampleSite.Edition("folder"), Target);
        Publication.Write(ExampleSite.Edition("zip"), Target, new ZipForm());
        Publication.Write(ExampleSite.Edition("folder again"), Target);

        Assert.Equal(ExampleSite.Edition("folder again").Files(), ExampleSite.FilesIn(Path.Combine(Target, "rufus")));
        Assert.Equal(ExampleSite.Edition("zip").FilesAsInZip(), ExampleSite.FilesInZip(Zip));
    }

    [Fact]
    public void One_publish_of_several_clients_leaves_each_alone_with_their_own()
    {
        using (var target = TargetFolder.Open(Target))
        {
            Parallel.ForEach(["rufus", "maud", "ivo"], client =>
                new ZipForm().Write(ExampleSite.Edition("of " + client, client), target)
            );
        }

        foreach (var client in (string[])["rufus", "maud", "ivo"])
            Assert.Equal(
                ExampleSite.Edition("of " + client, client).FilesAsInZip(),
                ExampleSite.FilesInZip(Path.Combine(Target, client + ".zip"))
            );
    }

    [Fact]
    public void A_zip_closed_to_others_stays_closed()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such permissions.");
        const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(Zip, OwnerOnly);

        Publication.Write(ExampleSite.Edition("other"), Target, new ZipForm());

        if (!OperatingSystem.IsWindows())
            Assert.Equal(OwnerOnly, File.GetUnixFileMode(Zip));
    }

    [Fact]
    public void A_zip_that_is_changed_keeps_its_old_bytes_for_whoever_has_it_open()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        var before = File.ReadAllBytes(Zip);
        using var open = File.OpenRead(Zip);

        Publication.Write(ExampleSite.Edition("another"), Target, new ZipForm());

        using var read = new MemoryStream();
        open.CopyTo(read);
        Assert.Equal(before, read.ToArray());
    }

    [Fact]
    public void A_site_that_could_not_be_read_back_is_not_zipped()
    {
        var many = new Site(
            ExampleSite.Rufus,
            ExampleSite.Edition("first").Pages,
            Enumerable.Range(0, PublishedSite.MostFiles).Select(n => new Asset($"{n}.png", default))
        );

        var failure = Assert.Throws<HandOverException>(() => Publication.Write(many, Target, new ZipForm()));

        Assert.Equal("The site of 'rufus' is too large for one zip.", failure.Sentence);
    }
}
