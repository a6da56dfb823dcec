using System.Diagnostics;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

[Trait("Slow", "yes")]
public sealed class TargetFolderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string Target => folder["sites"];

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("folder")]
    [InlineData("zip")]
    public async Task A_second_publish_waits_for_the_first(string form)
    {
        var first = TargetFolder.Open(Target);
        if (form == "zip")
            new ZipForm().Write(ExampleSite.Edition("first"), first);
        var second = Task.Run(
            () =>
                form == "zip"
                    ? Publication.Write(ExampleSite.Edition("second"), Target, new ZipForm())
                    : Publication.Write(ExampleSite.Edition("second"), Target),
            TestContext.Current.CancellationToken
        );
        await Task.Delay(600, TestContext.Current.CancellationToken);

        Assert.False(second.IsCompleted);
        new FolderForm().Write(ExampleSite.Edition("first"), first);
        first.Dispose();

        Assert.Equal(["index.html", "session-1.html"], (await second).Written);
    }

    [Fact]
    public async Task Publishes_of_both_forms_at_once_take_turns()
    {
        IForm[] forms = [new FolderForm(), new ZipForm()];
        var publishes = forms.SelectMany(form =>
            ((string[])["one", "other"]).Select(who =>
                Task.Run(() =>
                {
                    for (var n = 0; n < 4; n++)
                        Publication.Write(ExampleSite.Edition($"{n} of {who}"), Target, form);
                })
            )
        );

        await Task.WhenAll(publishes);

        var last = ((string[])["3 of one", "3 of other"]).Select(edition => ExampleSite.Edition(edition).Files()).ToArray();
        Assert.Contains(ExampleSite.FilesIn(Path.Combine(Target, "rufus")), last);
        Assert.Contains(new ZipForm().Read(Path.Combine(Target, "rufus.zip"), ExampleSite.Rufus).Files(), last);
        Assert.Empty(TemporaryFolder.LeftoversIn(Target));
    }

    [Fact]
    public void A_second_publish_gives_up_after_a_few_seconds_with_one_line()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        using var other = new PublishingProcess("hold", Target);
        var watch = Stopwatch.StartNew();

        var refusal = Assert.Throws<HandOverException>(() => Publication.Write(ExampleSite.Edition("second"), Target));

        Assert.InRange(watch.Elapsed.TotalSeconds, 3, 20);
        Assert.Equal($"Another publish is at work in '{Target}'. Wait until it is done, and publish again.", refusal.Message);
        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(Target, "rufus")));
        other.Kill();
        Assert.True(Publication.Write(ExampleSite.Edition("second"), Target).Changed);
    }

    [Fact]
    public void A_site_caught_between_two_renames_is_put_back()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        Directory.Move(Path.Combine(Target, "rufus"), Path.Combine(Target, ".gradus-old-rufus"));
        CarelessPublication.WriteAll(ExampleSite.Long("second"), Path.Combine(Target, ".gradus-new-rufus"));

        Publication.Write(ExampleSite.Edition("first", "maud"), Target);

        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(Target, "rufus")));
        Assert.Empty(TemporaryFolder.LeftoversIn(Target));
    }

    [Fact]
    public void An_unfinished_zip_goes_and_the_whole_one_stays()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        var before = File.ReadAllBytes(Path.Combine(Target, "rufus.zip"));
        File.WriteAllBytes(Path.Combine(Target, ".gradus-new-rufus.zip"), before[..100]);
        File.WriteAllBytes(Path.Combine(Target, ".gradus-new-maud.zip"), before);
        Directory.CreateDirectory(Path.Combine(Target, ".gradus-new-ivo.zip/drafts"));
        File.WriteAllText(Path.Combine(Target, ".gradus-new-Notes of mine.zip"), "");

        TargetFolder.Open(Target).Dispose();

        Assert.Equal([".gradus-new-Notes of mine.zip"], TemporaryFolder.LeftoversIn(Target));
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(Target, "rufus.zip")));
        Assert.False(File.Exists(Path.Combine(Target, "maud.zip")));
    }

    [Fact]
    public void A_leftover_that_is_a_link_goes_and_what_it_leads_to_stays()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        Directory.CreateSymbolicLink(Path.Combine(Target, ".gradus-new-rufus"), Path.Combine(Target, "rufus"));

        TargetFolder.Open(Target).Dispose();

        Assert.Empty(TemporaryFolder.LeftoversIn(Target));
        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(Target, "rufus")));
    }

    [Fact]
    public void An_unfinished_folder_that_could_not_be_removed_is_no_part_of_the_next_try()
    {
        using var target = TargetFolder.Open(Target);
        CarelessPublication.WriteAll(ExampleSite.Long("half"), Path.Combine(Target, ".gradus-new-rufus"));

        new FolderForm().Write(ExampleSite.Edition("first"), target);

        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(Target, "rufus")));
    }

    [Fact]
    public void Leftovers_go_at_the_next_publish_and_other_hidden_things_stay()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        CarelessPublication.WriteAll(ExampleSite.Edition("half").Without("index.html"), Path.Combine(Target, ".gradus-new-maud"));
        CarelessPublication.WriteAll(ExampleSite.Edition("older"), Path.Combine(Target, ".gradus-old-rufus"));
        Directory.CreateDirectory(Path.Combine(Target, ".git"));
        File.WriteAllText(Path.Combine(Target, ".gradus-notes-of-mine"), "");

        var result = Publication.Write(ExampleSite.Edition("first"), Target);

        Assert.False(result.Changed);
        Assert.Equal([".git", ".gradus-notes-of-mine"], TemporaryFolder.LeftoversIn(Target).Order(StringComparer.Ordinal));
        Assert.False(Directory.Exists(Path.Combine(Target, "maud")));
    }
}
