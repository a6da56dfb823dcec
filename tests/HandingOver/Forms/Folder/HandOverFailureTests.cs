using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>Each test runs as anybody, root too, whom permissions do not stop: the disk itself refuses.</summary>
public sealed class HandOverFailureTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_full_disk_leaves_the_old_site_whole_and_nothing_behind()
    {
        var target = folder.Mount("full", kibibytes: 256);
        Publication.Write(ExampleSite.Edition("first"), target);
        var large = ExampleSite.Edition("second").With(new Page("session-2.html", new string('a', 300_000)));

        var failure = Refusal(large, target);

        Assert.Equal(
            $"There is no room left for '{target}/rufus'. Free some space on that disk, and publish again.",
            failure.Message
        );
        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(target, "rufus")));
        Assert.Empty(TemporaryFolder.LeftoversIn(target));
        Assert.True(Publication.Write(ExampleSite.Edition("second"), target).Changed);
    }

    [Fact]
    public void A_disk_that_cannot_be_written_is_said_to_be_one()
    {
        var target = folder.Mount("read-only", kibibytes: 256);
        Publication.Write(ExampleSite.Edition("first"), target);
        Assert.Equal(0, TemporaryFolder.Run("mount", "-o", "remount,ro", target).Exit);

        var failure = Refusal(ExampleSite.Edition("second"), target);

        Assert.Equal(
            $"'{target}' is on a disk that cannot be written. Name a folder on another disk with --to.",
            failure.Message
        );
        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(Path.Combine(target, "rufus")));
    }

    [Fact]
    public void A_disk_that_vanishes_in_the_middle_is_said_to_have_vanished()
    {
        using var target = TargetFolder.Open(folder["sites"]);

        var failure = Assert.Throws<HandOverException>(() => FolderForm.Write(ExampleSite.Edition("first"), target, places =>
            {
                Directory.Delete(target.Root, recursive: true);
                Exchange.Put(places);
            }));

        Assert.Contains("vanished", failure.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_that_vanished_is_not_made_again()
    {
        using var target = TargetFolder.Open(folder["sites"]);
        Directory.Delete(target.Root, recursive: true);

        var failure = Assert.Throws<HandOverException>(() => new FolderForm().Write(ExampleSite.Edition("first"), target));

        Assert.Equal($"'{target.Root}' vanished while it was being published into.", failure.Sentence);
        Assert.False(Directory.Exists(target.Root));
    }

    [Theory]
    [InlineData("exchange")]
    [InlineData("two renames")]
    public void A_failure_at_the_last_step_leaves_the_old_site_whole(string how)
    {
        using var target = TargetFolder.Open(folder["sites"]);
        new FolderForm().Write(ExampleSite.Edition("first"), target);

        Assert.Throws<HandOverException>(() => FolderForm.Write(ExampleSite.Edition("second"), target, places =>
            {
                Directory.Delete(places.New, recursive: true);
                if (how == "exchange")
                    Exchange.Put(places);
                else
                    Exchange.PutByTwoRenames(places);
            }));

        Assert.Equal(ExampleSite.Edition("first").Files(), ExampleSite.FilesIn(folder["sites/rufus"]));
        Assert.Empty(TemporaryFolder.LeftoversIn(target.Root));
    }

    [Fact]
    public void A_target_that_is_a_file_or_lies_in_one_is_refused()
    {
        File.WriteAllText(folder["letter"], "");

        foreach (var target in (string[])[folder["letter"], folder["letter/sites"], folder["letter/sites/of/the/gym"]])
            Assert.Equal(
                $"'{folder["letter"]}' is a file, not a folder.",
                Refusal(ExampleSite.Edition("first"), target).Sentence
            );
    }

    [Theory]
    [InlineData("")]
    [InlineData("/")]
    public void A_target_that_is_a_link_is_refused(string ending)
    {
        Directory.CreateDirectory(folder["elsewhere"]);
        Directory.CreateSymbolicLink(folder["sites"], folder["elsewhere"]);

        var failure = Refusal(ExampleSite.Edition("first"), folder["sites"] + ending);

        Assert.Equal(
            $"'{folder["sites"]}' is a link to '{folder["elsewhere"]}'. Name the folder itself with --to.",
            failure.Message
        );
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder["elsewhere"]));
    }

    [Fact]
    public void A_client_folder_that_is_a_link_or_a_file_is_refused()
    {
        Directory.CreateDirectory(folder["elsewhere"]);
        Directory.CreateDirectory(folder["sites"]);
        Directory.CreateSymbolicLink(folder["sites/rufus"], folder["elsewhere"]);
        File.WriteAllText(folder["sites/maud"], "");

        Assert.Contains("is a link", Refusal(ExampleSite.Edition("first"), folder["sites"]).Sentence, StringComparison.Ordinal);
        Assert.Contains(
            "is a file",
            Refusal(ExampleSite.Edition("first", "maud"), folder["sites"]).Sentence,
            StringComparison.Ordinal
        );
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder["elsewhere"]));
    }

    [Fact]
    public void A_folder_that_is_no_site_is_never_replaced()
    {
        Directory.CreateDirectory(folder["clients/rufus"]);
        File.WriteAllText(folder["clients/rufus/client.yaml"], "name: Rufus Elphick\n");

        var failure = Refusal(ExampleSite.Edition("first"), folder["clients"]);

        Assert.Contains("holds something that is no site", failure.Sentence, StringComparison.Ordinal);
        Assert.Equal("name: Rufus Elphick\n", File.ReadAllText(folder["clients/rufus/client.yaml"]));
    }

    [Fact]
    public void A_path_that_is_too_long_is_said_to_be()
    {
        var site = ExampleSite.Edition("first");
        Publication.Write(site, folder["sites"]);

        var failure = Refusal(site.With(new Page(new string('a', 300) + ".html", "")), folder["sites"]);

        Assert.Contains("longer than this system allows", failure.Sentence, StringComparison.Ordinal);
        Assert.Equal(site.Files(), ExampleSite.FilesIn(folder["sites/rufus"]));
        Assert.Contains("longer", Refusal(site, folder[new string('b', 300)]).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_with_no_name_is_refused() =>
        Assert.Equal(
            "The folder to publish into has no name. Name a folder with --to.",
            Refusal(ExampleSite.Edition("first"), "").Message
        );

    private static HandOverException Refusal(Site site, string target) =>
        Assert.Throws<HandOverException>(() => Publication.Write(site, target));
}
