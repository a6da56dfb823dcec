using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>What a program that knows nothing of Gradus makes of the zip.</summary>
public sealed class UnzipTests : IDisposable
{
    private static readonly Site Epee = ExampleSite
        .Edition("first")
        .With(new Page("épée – première.html", "<p>…</p>\n"), new Page("empty.html", ""));
    private readonly TemporaryFolder folder = new();

    public UnzipTests() => Publication.Write(Epee, folder["sites"], new ZipForm());

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_zip_passes_the_systems_own_test() =>
        Assert.Contains("No errors detected", Unzip("-t", folder["sites/rufus.zip"]), StringComparison.Ordinal);

    [Fact]
    public void A_damaged_zip_does_not_pass_it()
    {
        var zip = File.ReadAllBytes(folder["sites/rufus.zip"]);
        zip[zip.AsSpan().IndexOf("steadier"u8)] ^= 1;
        File.WriteAllBytes(folder["damaged.zip"], zip);

        Assert.NotEqual(0, TemporaryFolder.Run("unzip", "-t", folder["damaged.zip"]).Exit);
    }

    [Fact]
    public void Unpacking_makes_one_folder_with_every_file_byte_for_byte()
    {
        Unzip("-q", folder["sites/rufus.zip"], "-d", folder["unpacked"]);

        Assert.Equal([folder["unpacked/rufus"]], Directory.EnumerateFileSystemEntries(folder["unpacked"]));
        Assert.Equal(Epee.Files(), ExampleSite.FilesIn(folder["unpacked/rufus"]));
    }

    [Fact]
    public void Every_entry_is_a_plain_stored_file_of_the_earliest_date_in_ordinal_order()
    {
        var lines = Unzip("-Z", folder["sites/rufus.zip"])
            .Split('\n')
            .Where(line => line.Contains("rufus/", StringComparison.Ordinal))
            .ToArray();

        Assert.All(lines, line => Assert.Matches("^-rw-r--r--  2.0 unx +[0-9]+ b- stor 80-Jan-01 00:00 rufus/", line));
        Assert.Equal(
            Epee.FilesAsInZip().Keys.Order(StringComparer.Ordinal),
            lines.Select(line => Regex.Match(line, "rufus/.*$").Value)
        );
    }

    private static string Unzip(params string[] words)
    {
        // Without a locale that knows UTF-8 unzip writes é as a number.
        var (exit, output) = TemporaryFolder.Run("env", ["LC_ALL=C.UTF-8", "unzip", .. words]);
        Assert.True(
            exit != 127,
            "The program unzip is missing. Install the Debian package 'unzip', as root: apt-get install unzip"
        );
        Assert.True(exit == 0, $"unzip {string.Join(' ', words)} ended with {exit}:\n{output}");
        return output;
    }
}
