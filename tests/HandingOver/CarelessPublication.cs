using Gradus.Domain;

namespace Gradus.Tests.HandingOver;

/// <summary>Publishing as it must not be done: the planted faults that the tests have to see.</summary>
internal static class CarelessPublication
{
    public static void ClearAndWrite(Site site, string target)
    {
        var folder = Path.Combine(target, site.Client.Text);
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
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

    public static void WriteAll(Site site, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var page in site.Pages) File.WriteAllText(Path.Combine(folder, page.Path), page.Html);
    }
}
