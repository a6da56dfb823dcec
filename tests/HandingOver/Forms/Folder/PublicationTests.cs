using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class PublicationTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string Target => folder["sites/of/the/gym"];

    private string Place => Path.Combine(Target, "rufus");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_first_publish_writes_every_file_byte_for_byte()
    {
        var site = ExampleSite.Edition("first");

        var result = Publication.Write(site, Target);

        Assert.Equal(site.Files(), ExampleSite.FilesIn(Place));
        Assert.True(result.Changed);
        Assert.Equal(7, result.Written.Count);
        Assert.Empty(result.Untouched);
        Assert.Empty(result.Removed);
        Assert.Equal(6, result.Pages);
        Assert.Equal(
            Directory.EnumerateFiles(Place, "*", SearchOption.AllDirectories).Sum(path => new FileInfo(path).Length),
            result.Bytes
        );
        Assert.Empty(TemporaryFolder.LeftoversIn(Target));
    }

    [Fact]
    public void Publishing_the_same_again_touches_nothing_at_all()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        var before = DiskState.Of(Target);

        var result = Publication.Write(ExampleSite.Edition("first"), Target);

        Assert.False(result.Changed);
        Assert.Equal(7, result.Untouched.Count);
        Assert.Equal(before, DiskState.Of(Target));
    }

    [Fact]
    public void Writing_the_same_bytes_over_the_old_would_be_seen()
    {
        var site = ExampleSite.Edition("first");
        Publication.Write(site, Target);
        var before = DiskState.Of(Target);

        CarelessPublication.WriteAll(site, Place);

        Assert.NotEqual(before, DiskState.Of(Target));
    }

    [Fact]
    public void Only_a_changed_page_is_a_new_file()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        var before = DiskState.Inodes(Place);
        var site = ExampleSite.Edition("first").With(new Page("log.html", "<h1>Training log</h1>\n"));

        var result = Publication.Write(site, Target);

        var after = DiskState.Inodes(Place);
        Assert.Equal(["log.html"], result.Written);
        Assert.Equal(6, result.Untouched.Count);
        Assert.Equal(["log.html"], after.Keys.Where(path => after[path] != before[path]));
        Assert.Equal(site.Files(), ExampleSite.FilesIn(Place));
    }

    [Fact]
    public void A_change_that_keeps_the_length_of_a_page_is_a_change()
    {
        Publication.Write(ExampleSite.Edition("2 x hold 30 s"), Target);

        var result = Publication.Write(ExampleSite.Edition("3 x hold 30 s"), Target);

        Assert.Equal(["index.html", "session-1.html"], result.Written);
        Assert.Equal(ExampleSite.Edition("3 x hold 30 s").Files(), ExampleSite.FilesIn(Place));
    }

    [Fact]
    public void A_page_that_is_changed_keeps_its_old_text_for_whoever_has_it_open()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        using var open = new StreamReader(Path.Combine(Place, "index.html"));

        Publication.Write(ExampleSite.Edition("other"), Target);

        Assert.Contains("first", open.ReadToEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_that_is_no_longer_there_vanishes()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);

        var result = Publication.Write(ExampleSite.Edition("first").Without("progress.html"), Target);

        Assert.Equal(["progress.html"], result.Removed);
        Assert.Empty(result.Written);
        Assert.False(File.Exists(Path.Combine(Place, "progress.html")));
    }

    [Theory]
    [InlineData("letter.txt", "letter.txt")]
    [InlineData(".hidden", ".hidden")]
    [InlineData("pictures/other.jpg", "pictures/other.jpg")]
    public void What_somebody_put_into_the_folder_is_a_change_and_goes(string path, string removed)
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        File.WriteAllText(Path.Combine(Place, path), "mine");

        var result = Publication.Write(ExampleSite.Edition("first"), Target);

        Assert.Equal([removed], result.Removed);
        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Place));
    }

    [Fact]
    public void An_empty_folder_that_somebody_made_goes_too()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        Directory.CreateDirectory(Path.Combine(Place, "drafts"));

        var result = Publication.Write(ExampleSite.Edition("first"), Target);

        Assert.Equal(["drafts/"], result.Removed);
        Assert.False(Directory.Exists(Path.Combine(Place, "drafts")));
    }

    [Fact]
    public void A_link_in_the_folder_is_replaced_and_what_it_leads_to_stays()
    {
        var outside = Directory.CreateDirectory(folder["outside"]).FullName;
        var asLongAsTheLink = new string('a', Path.Combine(outside, "log.html").Length);
        var site = ExampleSite.Edition("first").With(new Page("log.html", asLongAsTheLink));
        Publication.Write(site, Target);
        File.Move(Path.Combine(Place, "log.html"), Path.Combine(outside, "log.html"));
        File.CreateSymbolicLink(Path.Combine(Place, "log.html"), Path.Combine(outside, "log.html"));
        Directory.CreateSymbolicLink(Path.Combine(Place, "more"), outside);

        var result = Publication.Write(site, Target);

        Assert.Equal(["log.html"], result.Written);
        Assert.Equal(["more"], result.Removed);
        Assert.Null(new FileInfo(Path.Combine(Place, "log.html")).LinkTarget);
        Assert.True(File.Exists(Path.Combine(outside, "log.html")));
    }

    [Fact]
    public void A_folder_closed_to_others_stays_closed()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such permissions.");
        const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        Publication.Write(ExampleSite.Edition("first"), Target);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(Place, OwnerOnly);

        Publication.Write(ExampleSite.Edition("other"), Target);

        if (!OperatingSystem.IsWindows())
            Assert.Equal(OwnerOnly, File.GetUnixFileMode(Place));
    }

    [Fact]
    public void One_publish_of_several_clients_leaves_each_alone_with_their_own()
    {
        using (var target = TargetFolder.Open(Target))
        {
            Parallel.ForEach(["rufus", "maud", "ivo"], client =>
                new FolderForm().Write(ExampleSite.Edition("of " + client, client), target)
            );
        }

        foreach (var client in (string[])["rufus", "maud", "ivo"])
            Assert.Equal(ExampleSite.Edition("of " + client, client).Files(), ExampleSite.FilesIn(Path.Combine(Target, client)));
    }
}
