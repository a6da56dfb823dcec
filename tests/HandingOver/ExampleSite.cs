using System.Globalization;
using System.IO.Compression;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.HandingOver;

/// <summary>Sites of the fencers at the Low Weir gym, as small or as large as a test needs.</summary>
internal static class ExampleSite
{
    public static readonly ClientId Rufus = new("rufus");

    /// <summary>Six pages and a picture; the edition stands on two of the pages, the other files are the same in every
    /// edition.</summary>
    public static Site Edition(string edition, string client = "rufus") =>
        new(
            new ClientId(client),
            [
                new("index.html", $"<h1>A longer, steadier lunge</h1>\n<p>{edition}</p>\n"),
                new("session-1.html", $"<h1>Ankles and hips</h1>\n<p>{edition}</p>\n"),
                new("before-you-start.html", "<h1>Before you start</h1>\r\n<p>Épée: the weapon arm is the left arm.</p>"),
                new("exercise-half-kneeling-ankle-rock.html", "<h1>Half-kneeling ankle rock</h1>\n"),
                new("progress.html", "<h1>Progress</h1>\n"),
                new("log.html", "<h1>Log</h1>\n"),
            ],
            [new("pictures/ankle-rock.jpg", new byte[] { 0xff, 0xd8, 0x00, 0x0a, 0x0d, 0xff, 0xd9 })]
        );

    /// <summary>Forty pages that all carry the edition, so that a publish takes long enough to be cut off inside.</summary>
    public static Site Long(string edition) =>
        new(
            Rufus,
            Enumerable
                .Range(1, 40)
                .Select(n => new Page($"exercise-{n}.html", $"<p>{edition}</p>\n"))
                .Append(new("index.html", $"<p>{edition}</p>\n")),
            []
        );

    /// <summary>The same, one of a row of editions.</summary>
    public static Site Long(int edition) => Long(edition.ToString(CultureInfo.InvariantCulture));

    public static Site With(this Site site, params Page[] pages) =>
        new(site.Client, site.Pages.Where(page => pages.All(p => p.Path != page.Path)).Concat(pages), site.Assets);

    public static Site Without(this Site site, string path) =>
        new(site.Client, site.Pages.Where(page => page.Path != path), site.Assets);

    /// <summary>Every file with its bytes, to compare a site with a folder.</summary>
    public static Dictionary<string, string> Files(this Site site) =>
        site
            .Pages.Select(page => (page.Path, Bytes: Encoding.UTF8.GetBytes(page.Html)))
            .Concat(site.Assets.Select(asset => (asset.Path, Bytes: asset.Bytes.ToArray())))
            .ToDictionary(file => file.Path, file => Convert.ToHexString(file.Bytes));

    public static Dictionary<string, string> FilesIn(string folder) =>
        Directory
            .EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .ToDictionary(path => Path.GetRelativePath(folder, path), path => Convert.ToHexString(File.ReadAllBytes(path)));

    /// <summary>Every file of a zip by its whole name, read by the framework alone.</summary>
    public static Dictionary<string, string> FilesInZip(string zip)
    {
        using var archive = ZipFile.OpenRead(zip);
        return archive.Entries.ToDictionary(
            entry => entry.FullName,
            entry =>
            {
                using var content = entry.Open();
                using var bytes = new MemoryStream();
                content.CopyTo(bytes);
                return Convert.ToHexString(bytes.ToArray());
            }
        );
    }

    /// <summary>The same files as <see cref="Files"/>, as they are called in a zip.</summary>
    public static Dictionary<string, string> FilesAsInZip(this Site site) =>
        site.Files().ToDictionary(file => $"{site.Client}/{file.Key}", file => file.Value);
}
