using System.IO.Compression;
using Gradus.Domain;

namespace Gradus.Tests.HandingOver;

/// <summary>Publishing as it must not be done: the planted faults that the tests have to see.</summary>
internal static class CarelessPublication
{
    public static void ClearAndWrite(Site site, string target)
    {
        var folder = Path.Combine(target, site.Client.Text);
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        WriteAll(site, folder);
    }

    /// <summary>Each file is exchanged in one step, the folder is not.</summary>
    public static void FileByFile(Site site, string target)
    {
        var folder = Directory.CreateDirectory(Path.Combine(target, site.Client.Text)).FullName;
        foreach (var page in site.Pages)
        {
            File.WriteAllText(Path.Combine(target, "unfinished"), page.Html);
            File.Move(Path.Combine(target, "unfinished"), Path.Combine(folder, page.Path), overwrite: true);
        }
    }

    /// <summary>The zip is written where it stands, instead of beside and renamed.</summary>
    public static void ZipInPlace(Site site, string target)
    {
        var path = Path.Combine(Directory.CreateDirectory(target).FullName, site.Client.Text + ".zip");
        using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite, FileShare.ReadWrite);
        using var zip = new ZipArchive(file, ZipArchiveMode.Create);
        foreach (var page in site.Pages)
        {
            using var content = new StreamWriter(
                zip.CreateEntry($"{site.Client}/{page.Path}", CompressionLevel.NoCompression).Open()
            );
            content.Write(page.Html);
        }
    }

    public static void WriteAll(Site site, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var page in site.Pages)
            File.WriteAllText(Path.Combine(folder, page.Path), page.Html);
    }
}
