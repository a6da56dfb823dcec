using System.IO.Compression;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>What the disk refuses a folder it refuses a zip too; the zip of before stays whole.</summary>
public sealed class ZipFailureTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_full_disk_leaves_the_old_zip_whole_and_nothing_behind()
    {
        var target = folder.Mount("full", kibibytes: 256);
        Publication.Write(ExampleSite.Edition("first"), target, new ZipForm());
        var large = ExampleSite.Edition("second").With(new Page("session-2.html", new string('a', 300_000)));

        var failure = Refusal(large, target);

        Assert.Equal(
            $"There is no room left for '{target}/rufus.zip'. Free some space on that disk, and publish again.",
            failure.Message
        );
        AssertFirstStandsIn(target);
        Assert.Empty(TemporaryFolder.LeftoversIn(target));
        Assert.True(Publication.Write(ExampleSite.Edition("second"), target, new ZipForm()).Changed);
    }

    [Fact]
    public void A_disk_that_cannot_be_written_is_said_to_be_one()
    {
        var target = folder.Mount("read-only", kibibytes: 256);
        Publication.Write(ExampleSite.Edition("first"), target, new ZipForm());
        Assert.Equal(0, TemporaryFolder.Run("mount", "-o", "remount,ro", target).Exit);

        var failure = Refusal(ExampleSite.Edition("second"), target);

        Assert.Equal(
            $"'{target}' is on a disk that cannot be written. Name a folder on another disk with --to.",
            failure.Message
        );
        AssertFirstStandsIn(target);
    }

    [Fact]
    public void A_disk_that_becomes_read_only_in_the_middle_leaves_the_old_zip_whole()
    {
        using var target = TargetFolder.Open(folder.Mount("turning", kibibytes: 256));
        new ZipForm().Write(ExampleSite.Edition("first"), target);

        var failure = Assert.Throws<HandOverException>(() => ZipForm.Write(ExampleSite.Edition("second"), target, places =>
            {
                // A file that is open for writing keeps a disk from turning; tmpfs is made to turn for this one folder only.
                Assert.Equal(0, TemporaryFolder.Run("mount", "--bind", target.Root, target.Root).Exit);
                Assert.Equal(0, TemporaryFolder.Run("mount", "-o", "remount,bind,ro", target.Root).Exit);
                try
                {
                    NewFile.Put(places);
                }
                finally
                {
                    TemporaryFolder.Run("umount", target.Root);
                }
            }));

        Assert.Contains("is on a disk that cannot be written", failure.Sentence, StringComparison.Ordinal);
        AssertFirstStandsIn(target.Root);
        Assert.Empty(TemporaryFolder.LeftoversIn(target.Root));
    }

    [Fact]
    public void A_disk_that_vanishes_in_the_middle_is_said_to_have_vanished()
    {
        using var target = TargetFolder.Open(folder["sites"]);

        var failure = Assert.Throws<HandOverException>(() => ZipForm.Write(ExampleSite.Edition("first"), target, places =>
            {
                Directory.Delete(target.Root, recursive: true);
                NewFile.Put(places);
            }));

        Assert.Contains("vanished", failure.Sentence, StringComparison.Ordinal);
        Assert.False(Directory.Exists(target.Root));
    }

    [Fact]
    public void A_target_that_vanished_is_not_made_again()
    {
        using var target = TargetFolder.Open(folder["sites"]);
        Directory.Delete(target.Root, recursive: true);

        var failure = Assert.Throws<HandOverException>(() => new ZipForm().Write(ExampleSite.Edition("first"), target));

        Assert.Equal($"'{target.Root}' vanished while it was being published into.", failure.Sentence);
        Assert.False(Directory.Exists(target.Root));
    }

    [Fact]
    public void A_failure_at_the_last_step_leaves_the_old_zip_whole()
    {
        using var target = TargetFolder.Open(folder["sites"]);
        new ZipForm().Write(ExampleSite.Edition("first"), target);

        Assert.Throws<HandOverException>(() => ZipForm.Write(ExampleSite.Edition("second"), target, places =>
            {
                File.Delete(places.New);
                NewFile.Put(places);
            }));

        AssertFirstStandsIn(target.Root);
        Assert.Empty(TemporaryFolder.LeftoversIn(target.Root));
    }

    [Fact]
    public void A_folder_in_the_way_is_refused_and_stays()
    {
        Directory.CreateDirectory(folder["sites/rufus.zip"]);
        File.WriteAllText(folder["sites/rufus.zip/notes.md"], "mine");

        var failure = Refusal(ExampleSite.Edition("first"), folder["sites"]);

        Assert.Equal(
            $"'{folder["sites/rufus.zip"]}' is a folder where the client's zip should be. Move it away, or name another "
                + "folder with --to.",
            failure.Message
        );
        Assert.Equal("mine", File.ReadAllText(folder["sites/rufus.zip/notes.md"]));
    }

    [Fact]
    public void A_link_in_the_way_is_refused_and_what_it_leads_to_stays()
    {
        Directory.CreateDirectory(folder["sites"]);
        File.WriteAllText(folder["elsewhere.zip"], "mine");
        File.CreateSymbolicLink(folder["sites/rufus.zip"], folder["elsewhere.zip"]);

        Assert.Equal(
            $"'{folder["sites/rufus.zip"]}' is a link to another place.",
            Refusal(ExampleSite.Edition("first"), folder["sites"]).Sentence
        );
        Assert.Equal("mine", File.ReadAllText(folder["elsewhere.zip"]));
    }

    public static TheoryData<string, byte[]> OtherFiles() =>
        new()
        {
            { "a letter", "Dear Rufus, this is no zip."u8.ToArray() },
            { "photographs", HandMadeZip.Of(zip => HandMadeZip.Add(zip, "photographs/piste.jpg", "mine")) },
            { "a zip of his with no front page", HandMadeZip.Of(zip => HandMadeZip.Add(zip, "rufus/piste.jpg", "mine")) },
            { "a site and something else", HandMadeZip.With("piste.jpg") },
            {
                "a site squeezed by somebody else",
                HandMadeZip.Of(zip =>
                    HandMadeZip.Add(zip, "rufus/index.html", new string('a', 100), level: CompressionLevel.SmallestSize)
                )
            },
            { "half a zip", HandMadeZip.With("rufus/piste.jpg")[..^30] },
        };

    [Theory]
    [MemberData(nameof(OtherFiles))]
    public void A_file_that_is_no_site_of_the_client_is_never_replaced(string what, byte[] bytes)
    {
        Directory.CreateDirectory(folder["sites"]);
        File.WriteAllBytes(folder["sites/rufus.zip"], bytes);

        var failure = Refusal(ExampleSite.Edition("first"), folder["sites"]);

        Assert.Equal($"'{folder["sites/rufus.zip"]}' is something other than a whole site of 'rufus'.", failure.Sentence);
        Assert.True(bytes.AsSpan().SequenceEqual(File.ReadAllBytes(folder["sites/rufus.zip"])), what);
    }

    [Fact]
    public void A_file_of_no_bytes_is_no_loss()
    {
        Directory.CreateDirectory(folder["sites"]);
        File.WriteAllBytes(folder["sites/rufus.zip"], []);

        Assert.True(Publication.Write(ExampleSite.Edition("first"), folder["sites"], new ZipForm()).Changed);
    }

    [Fact]
    public void A_path_that_is_too_long_is_said_to_be() =>
        Assert.Contains(
            "longer",
            Refusal(ExampleSite.Edition("first"), folder[new string('b', 300)]).Sentence,
            StringComparison.Ordinal
        );

    private static void AssertFirstStandsIn(string target) =>
        Assert.Equal(ExampleSite.Edition("first").FilesAsInZip(), ExampleSite.FilesInZip(Path.Combine(target, "rufus.zip")));

    private static HandOverException Refusal(Site site, string target) =>
        Assert.Throws<HandOverException>(() => Publication.Write(site, target, new ZipForm()));
}
