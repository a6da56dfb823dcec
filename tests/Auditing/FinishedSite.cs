using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>One client's site of the little practice, whole, for a test to plant a fault in.</summary>
internal static class FinishedSite
{
    private static readonly Practice Practice = ReadPractice();

    public static readonly Plan Plan = Planned.For(Practice, Practice.Find(new ClientId("tess"))!);

    public static readonly Site Site = SiteRenderer.Render(Plan, new Theme("little", LittlePractice.Theme.Select(Bytes)), [])!;

    private static readonly string[] Others = ["Bram Ullyett"];

    public static Series<Finding> Audit(Site site) => RuleBook.Audit(Plan, site, Others).ToSeries();

    /// <summary>The site with one text in one file replaced wherever it stands; it must stand there.</summary>
    public static Site With(string path, string said, string instead)
    {
        var pages = Site.Pages.Select(p => p.Path == path ? p with { Html = Replaced(p.Html) } : p);
        var assets = Site.Assets.Select(a =>
            a.Path == path ? a with { Bytes = Encoding.UTF8.GetBytes(Replaced(Encoding.UTF8.GetString(a.Bytes.Span))) } : a
        );
        return new(Site.Client, pages, assets);

        string Replaced(string text)
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
            return text.Replace(said, instead, StringComparison.Ordinal);
        }
    }

    public static Site And(this Site site, string path, string text) =>
        path.EndsWith(".html", StringComparison.Ordinal)
            ? new(site.Client, site.Pages.Append(new(path, text)), site.Assets)
            : new(site.Client, site.Pages, site.Assets.Append(new(path, Encoding.UTF8.GetBytes(text))));

    private static Practice ReadPractice() =>
        PracticeReader.Read(SourceFolder.Of(LittlePractice.Files.Select(Bytes)), []).Practice!;

    private static KeyValuePair<string, byte[]> Bytes(KeyValuePair<string, string> file) =>
        KeyValuePair.Create(file.Key, Encoding.UTF8.GetBytes(file.Value));
}
