using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>The plain theme as files, changed from test to test, and the client that it is filled for.</summary>
internal sealed class PlainTheme
{
    public static readonly Plan Plan = HostilePractice.Harmless.Read().Plan;

    private static readonly SortedDictionary<string, byte[]> Files = new(
        Directory.EnumerateFiles(Repository.Path("themes", "plain")).ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes),
        StringComparer.Ordinal
    );

    private readonly SortedDictionary<string, byte[]> files = new(Files, StringComparer.Ordinal);

    public PlainTheme With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public PlainTheme With(string path, byte[] bytes)
    {
        files[path] = bytes;
        return this;
    }

    public PlainTheme Without(string path)
    {
        Assert.True(files.Remove(path));
        return this;
    }

    /// <summary>The theme with one passage of one file written anew wherever it stands; it must stand there.</summary>
    public PlainTheme Edit(string path, string said, string instead)
    {
        var text = Text(path);
        Assert.Contains(said, text, StringComparison.Ordinal);
        return With(path, text.Replace(said, instead, StringComparison.Ordinal));
    }

    public string Text(string path) => Encoding.UTF8.GetString(files[path]);

    public (Site? Site, Series<Finding> Findings) Fill(Plan? plan = null)
    {
        var findings = new Findings();
        var site = SiteRenderer.Render(plan ?? Plan, new Theme("mine", files), findings);
        return (site, findings.ToSeries());
    }

    /// <summary>The text of one page, of a theme in which nothing is wrong.</summary>
    public string Page(string path, Plan? plan = null)
    {
        var (site, findings) = Fill(plan);
        Assert.Empty(findings);
        return Assert.Single(site?.Pages ?? [], p => p.Path == path).Html;
    }
}
