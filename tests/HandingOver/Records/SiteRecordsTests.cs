using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>A record saves work or counts as none; nothing that stands in its place does harm.</summary>
public sealed class SiteRecordsTests : IDisposable
{
    private static readonly ClientId Nuala = new("nuala");

    private static readonly SiteRecord Example = new(
        "key",
        "site",
        [new("folder", "hash", 15, 753_000_000_000)],
        [
            new(new("side-named-wrong"), Level.Warning, Nuala, new("a.html", 12, 3), "Ein „Satz“.\n\u2028", "Hilfe.", 7)
            {
                Places = 3,
            },
            new(new("theme-broken"), Level.Error, null, Location.Whole("look.css"), "A", "B"),
        ],
        [new("session-1.html", 12, "<p>\t\"links\" & rechts</p>")]
    );

    private readonly TemporaryFolder folder = new();

    private SiteRecords Records => new(folder.Root);

    private string Place => folder[".gradus-made/nuala.pages"];

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_is_kept_is_read_back_whole()
    {
        Records.Keep(Nuala, Rendition.Pages, Example);
        Assert.Equal(Example, Records.Read(Nuala, Rendition.Pages));
        Assert.Null(Records.Read(Nuala, Rendition.OneFile));
        Assert.Null(Records.Read(new("rufus"), Rendition.Pages));
        Assert.Equal([".gradus-made/nuala.pages"], Files());
    }

    [Fact]
    public void What_is_kept_of_sources_is_read_back_whole()
    {
        var asked = new Asked();
        asked.Note(new ExerciseId("wrist-lift"));
        asked.Note(new ExerciseId("heel-lift"));
        asked.NoteErrors();
        Records.Keep(Nuala, new ClientRecord("key", asked, "plan", "edition", "today", Example.Found));
        var read = Records.Read(Nuala);
        Assert.NotNull(read);
        Assert.Equal(("key", "plan", "edition", "today"), (read.Key, read.Plan, read.Edition, read.Judged));
        Assert.Equal(Example.Found, read.Found);
        Assert.Equal(["heel-lift", "wrist-lift"], read.Asked.Exercises.Select(e => e.Text));
        Assert.Equal((true, false), (read.Asked.IsOfErrors, read.Asked.IsOfEverything));
        Assert.Null(Records.Read(new("rufus")));
        var text = File.ReadAllText(folder[".gradus-made/nuala.sources"])[65..]
            .Replace("\"heel-lift\"", "\"../heel\"", StringComparison.Ordinal);
        File.WriteAllText(folder[".gradus-made/nuala.sources"], TextHash.Whole(text) + "\n" + text);
        Assert.Null(Records.Read(Nuala));
    }

    [Fact]
    public void A_bit_that_turned_or_a_byte_that_is_missing_makes_it_none()
    {
        Records.Keep(Nuala, Rendition.Pages, Example);
        var whole = File.ReadAllBytes(Place);
        for (var at = 0; at < whole.Length; at++)
        {
            var turned = (byte[])whole.Clone();
            turned[at] ^= (byte)(1 << (at % 8));
            File.WriteAllBytes(Place, turned);
            Assert.Null(Records.Read(Nuala, Rendition.Pages));
            File.WriteAllBytes(Place, whole[..at]);
            Assert.Null(Records.Read(Nuala, Rendition.Pages));
        }

        File.WriteAllBytes(Place, [.. whole, (byte)' ']);
        Assert.Null(Records.Read(Nuala, Rendition.Pages));
        File.WriteAllBytes(Place, whole);
        Assert.NotNull(Records.Read(Nuala, Rendition.Pages));
    }

    /// <summary>Somebody may write anything behind a hash that fits.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("{\"key\":null,\"site\":\"\",\"standing\":[],\"found\":[],\"lines\":[]}")]
    [InlineData("{\"key\":1,\"site\":\"\",\"standing\":[],\"found\":[],\"lines\":[]}")]
    [InlineData("{\"key\":\"\",\"site\":\"\",\"standing\":{},\"found\":[],\"lines\":[]}")]
    [InlineData("{\"key\":\"\",\"site\":\"\",\"standing\":[1],\"found\":[],\"lines\":[]}")]
    [InlineData("{\"key\":\"\",\"site\":\"\",\"standing\":[],\"found\":[{\"rule\":\"a\",\"level\":\"Worst\"}],\"lines\":[]}")]
    [InlineData("{\"key\":\"\",\"site\":\"\",\"standing\":[],\"found\":[{\"rule\":\"a\",\"client\":\"../x\"}],\"lines\":[]}")]
    [InlineData(
        "{\"key\":\"\",\"site\":\"\",\"standing\":[],\"found\":[],\"lines\":[{\"file\":\"a\",\"line\":1e9,\"text\":\"\"}]}"
    )]
    public void What_is_no_record_is_none(string json)
    {
        Directory.CreateDirectory(folder[".gradus-made"]);
        File.WriteAllText(Place, TextHash.Whole(json) + "\n" + json);
        Assert.Null(Records.Read(Nuala, Rendition.Pages));
    }

    [Fact]
    public void A_link_and_a_folder_in_its_place_are_none_and_in_the_way_of_none()
    {
        Directory.CreateDirectory(folder["elsewhere/.gradus-made"]);
        new SiteRecords(folder["elsewhere"]).Keep(Nuala, Rendition.Pages, Example);
        Directory.CreateDirectory(folder[".gradus-made"]);
        File.CreateSymbolicLink(Place, folder["elsewhere/.gradus-made/nuala.pages"]);
        Assert.Null(Records.Read(Nuala, Rendition.Pages));
        File.Delete(Place);
        Directory.CreateDirectory(Place);
        var records = Records;
        records.Keep(Nuala, Rendition.Pages, Example);
        Assert.NotNull(records.Trouble);
        Assert.Null(records.Read(Nuala, Rendition.Pages));
        Assert.DoesNotContain(Files(), f => f.Contains("new-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_full_disk_is_told_once_and_leaves_the_record_of_before()
    {
        var disk = folder.Mount("disk", 64);
        var records = new SiteRecords(disk);
        records.Keep(Nuala, Rendition.Pages, Example);
        Assert.Null(records.Trouble);
        for (var n = 0; n < 16; n++)
            Assert.Equal(n < 15, TemporaryFolder.Run("dd", "if=/dev/zero", $"of={disk}/{n}", "bs=4096", "count=1").Exit == 0);
        records.Keep(Nuala, Rendition.Pages, Example with { Key = new string('k', 8000) });
        Assert.Equal("there is no room left on that disk", records.Trouble);
        Assert.Equal(Example, records.Read(Nuala, Rendition.Pages));
    }

    [Fact]
    public void The_same_site_goes_on_telling_of_the_forms_of_before_and_another_does_not()
    {
        Records.Keep(Nuala, Rendition.Pages, Example);
        Records.Keep(Nuala, Rendition.Pages, Example with { Standing = [new("zip", "other", 15, 1)] });
        Assert.Equal(["zip", "folder"], Records.Read(Nuala, Rendition.Pages)?.Standing.Select(s => s.Form));
        Records.Keep(Nuala, Rendition.Pages, Example with { Site = "new", Standing = [new("zip", "other", 15, 1)] });
        Assert.Equal(["zip"], Records.Read(Nuala, Rendition.Pages)?.Standing.Select(s => s.Form));
    }

    [Fact]
    public void Whoever_has_no_site_there_is_forgotten()
    {
        Publication.Write(ExampleSite.Edition("1"), folder.Root);
        var here = ExampleSite.Edition("1").Client;
        Records.Keep(here, Rendition.Pages, Example);
        Records.Keep(new("long-gone"), Rendition.OneFile, Example);
        File.WriteAllText(folder[".gradus-made/.gradus-new-cut.pages"], "");
        Records.Forget(Forms.All);
        Assert.Equal([$".gradus-made/{here}.pages"], Files().Where(f => f.StartsWith(".gradus-made", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("folder")]
    [InlineData("zip")]
    [InlineData("file")]
    public void Any_change_of_what_stands_changes_its_hash(string word)
    {
        var form = Forms.All.Named(word);
        var site = ExampleSite.Edition("1");
        if (form.Takes == Rendition.OneFile)
            site = new(site.Client, [new("all-pages.html", "<section data-page=\"index.html\">")], []);
        var place = Publication.Write(site, folder.Root, form).Place;
        var hash = form.HashOf(place);
        Assert.NotNull(hash);
        Assert.Equal(hash, form.HashOf(place));
        foreach (var file in Directory.Exists(place) ? Directory.GetFiles(place, "*", SearchOption.AllDirectories) : [place])
        {
            var bytes = File.ReadAllBytes(file);
            var changed = (byte[])bytes.Clone();
            changed[^1] ^= 1;
            File.WriteAllBytes(file, changed);
            Assert.NotEqual(hash, form.HashOf(place));
            File.WriteAllBytes(file, bytes);
        }

        Assert.Equal(hash, form.HashOf(place));
        if (Directory.Exists(place))
        {
            Directory.CreateDirectory(Path.Combine(place, "empty"));
            Assert.NotEqual(hash, form.HashOf(place));
            Directory.Delete(Path.Combine(place, "empty"));
            File.WriteAllText(Path.Combine(place, ".hidden"), "");
            Assert.NotEqual(hash, form.HashOf(place));
            File.Delete(Path.Combine(place, ".hidden"));
            File.CreateSymbolicLink(Path.Combine(place, "link.html"), Path.Combine(place, "index.html"));
            Assert.Null(form.HashOf(place));
        }

        Assert.Null(form.HashOf(place + "-not-there"));
    }

    private IEnumerable<string> Files() =>
        Directory
            .EnumerateFiles(folder.Root, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(folder.Root, f))
            .Where(f => f.StartsWith(".gradus-made", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);
}
