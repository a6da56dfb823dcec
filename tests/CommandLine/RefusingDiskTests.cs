using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Tests.HandingOver;

namespace Gradus.Tests.CommandLine;

/// <summary>What a disk refuses is one clear line and status 2, and nothing half made is left. Each runs as root too, whom
/// permissions do not stop.</summary>
[Trait("Slow", "yes")]
public sealed class RefusingDiskTests : IDisposable
{
    private static readonly Series<StarterFile> Files =
    [
        new("a/one.md", "1"),
        new("b/two.md", "2"),
        new("c/three.md", "3"),
        new("practice.md", "4"),
    ];

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("practice")]
    [InlineData("of/the/gym/practice")]
    public void A_beginning_on_a_full_disk_leaves_nothing_behind(string name)
    {
        var disk = folder.Mount("full", kibibytes: 32);
        var asked = Path.Combine(disk, name);

        Refused($"'{asked}' could not be written, and nothing was: there is no room left on that disk.", "begin", asked);

        Assert.Empty(Directory.EnumerateFileSystemEntries(disk));
    }

    [Fact]
    public void An_empty_folder_on_a_full_disk_stays_empty()
    {
        var asked = Directory.CreateDirectory(Path.Combine(folder.Mount("full", kibibytes: 32), "practice")).FullName;

        Refused($"'{asked}' could not be written, and nothing was: there is no room left on that disk.", "begin", asked);

        Assert.Empty(Directory.EnumerateFileSystemEntries(asked));
    }

    [Fact]
    public void A_disk_that_cannot_be_written_is_said_to_be_one()
    {
        var disk = folder.Mount("read-only", kibibytes: 256);
        Directory.CreateDirectory(Path.Combine(disk, "empty"));
        Assert.Equal(0, TemporaryFolder.Run("mount", "-o", "remount,ro", disk).Exit);

        foreach (
            var asked in (string[])
                [Path.Combine(disk, "practice"), Path.Combine(disk, "empty"), Path.Combine(disk, "of", "the", "gym")]
        )
            Refused($"'{asked}' could not be written, and nothing was: that disk cannot be written.", "begin", asked);

        Assert.Equal([Path.Combine(disk, "empty")], Directory.GetFileSystemEntries(disk, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_new_client_on_a_full_disk_is_there_whole_or_not_at_all()
    {
        var practice = Path.Combine(folder.Mount("full", kibibytes: 1024), "practice");
        Assert.Equal(0, Gradus.Run("begin", practice).Status);
        var before = FolderBytes.Of(practice);
        var filler = Path.Combine(folder["full"], "filler");
        Fill(filler);

        Refused(
            $"'{Path.Combine(practice, "clients/ada-wren")}' could not be written, and nothing was: there is no room "
                + "left on that disk.",
            "new",
            "client",
            "ada-wren",
            "--in",
            practice
        );
        Refused(
            $"'{Path.Combine(practice, "exercises/hip-rock.md")}' could not be written, and nothing was: there is no "
                + "room left on that disk.",
            "new",
            "exercise",
            "hip-rock",
            "--in",
            practice
        );

        Assert.Equal(before, FolderBytes.Of(practice));
        Assert.Equal(
            ["filler", "practice"],
            Directory.GetFileSystemEntries(folder["full"]).Select(e => Path.GetFileName(e)).Order(StringComparer.Ordinal)
        );
        File.Delete(filler);
        Assert.Equal(0, Gradus.Run("new", "client", "ada-wren", "--in", practice).Status);
    }

    [Fact]
    public void A_site_that_has_no_room_is_not_there_at_all()
    {
        Assert.Equal(0, Gradus.Run("begin", folder["practice"], "--today", "2026-12-07").Status);
        var disk = folder.Mount("full", kibibytes: 32);

        Refused(
            $"There is no room left for '{Path.Combine(disk, "perrin")}'. Free some space on that disk, and publish again.",
            "publish",
            folder["practice"],
            "--to",
            disk,
            "--today",
            "2026-12-07"
        );

        Assert.Equal([".gradus-lock"], Directory.GetFileSystemEntries(disk).Select(e => Path.GetFileName(e)));
    }

    [Fact]
    public void A_folder_that_was_removed_under_the_coach_is_said_to_be_gone()
    {
        Assert.Equal(0, Gradus.Run("begin", folder["practice"], "--today", "2026-12-07").Status);
        var gradus = Path.Combine(AppContext.BaseDirectory, "gradus.dll");
        Assert.Equal(
            "gradus: 'gym' could not be written, and nothing was: its place is not there, or vanished meanwhile.\n2\n"
                + "gradus: Something in 'sites' vanished while it was being written. See that the folder and its disk "
                + "are still there, and publish again.\n2\n",
            TemporaryFolder
                .Run(
                    "sh",
                    "-c",
                    $"mkdir '{folder["gone"]}' && cd '{folder["gone"]}' && rmdir '{folder["gone"]}'; dotnet '{gradus}' "
                        + $"begin gym 2>&1; echo $?; dotnet '{gradus}' publish '{folder["practice"]}' --to sites 2>&1; echo $?"
                )
                .Output
        );
        Assert.False(Directory.Exists(folder["gone"]));
    }

    [Fact]
    public void A_folder_without_a_name_is_refused() =>
        Refused("The folder has no name. Name one that is not there yet, or is empty.", "begin", "");

    [Theory]
    [InlineData(1, false)]
    [InlineData(3, false)]
    [InlineData(1, true)]
    [InlineData(3, true)]
    public void A_place_that_vanishes_in_the_middle_does_not_become_half_a_practice(int vanishesAt, bool isEmptyFolder)
    {
        if (isEmptyFolder)
            Directory.CreateDirectory(folder["gym/practice"]);
        var written = 0;

        var trouble = Assert.Throws<IOException>(() => FreshFiles.WriteFolder(folder["gym/practice"], Files, (path, text) =>
            {
                File.WriteAllText(path, text);
                if (++written == vanishesAt)
                    Directory.Delete(folder["gym"], recursive: true);
            }));

        Assert.Equal(
            $"'{folder["gym/practice"]}' could not be written, and nothing was: its place is not there, or vanished meanwhile.",
            trouble.Message
        );
        Assert.Empty(Directory.EnumerateFiles(folder.Root, "*", SearchOption.AllDirectories));
        FreshFiles.WriteFolder(folder["gym/practice"], Files);
        Assert.Equal(
            Files.Select(f => folder["gym/practice/" + f.Path]),
            Directory.GetFiles(folder["gym/practice"], "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        );
    }

    /// <summary>Takes all the room that is left on a small disk.</summary>
    private static void Fill(string filler)
    {
        using var file = new FileStream(filler, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        try
        {
            while (true)
                file.Write(new byte[4096]);
        }
        catch (IOException)
        {
            return;
        }
    }

    private static void Refused(string line, params string[] words)
    {
        var answer = Gradus.Run(words);
        Assert.Equal((2, "", $"gradus: {line}\n"), (answer.Status, answer.Output, answer.Error));
    }
}
