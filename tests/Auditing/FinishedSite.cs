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
    private static readonly Practice Practice = ReadPractice(text => text);

    private static readonly Practice RestrictedPractice = ReadPractice(text =>
        text.Replace(
            "name: Tess Harrowby\n",
            "name: Tess Harrowby\nrestrictions:\n  - by: her physiotherapist\n    on: 2026-11-23\n    until: 2027-03-31\n"
                + "    joint: right wrist\n",
            StringComparison.Ordinal
        )
    );

    public static readonly Plan Plan = Planned.For(Practice, Practice.Find(new ClientId("tess"))!);

    public static readonly Site Site = Rendered(Plan);

    /// <summary>The same client, whose physiotherapist asked to spare a wrist that no exercise loads.</summary>
    private static readonly Plan RestrictedPlan = Planned.For(RestrictedPractice, RestrictedPractice.Find(new ClientId("tess"))!);

    private static readonly Site RestrictedSite = Rendered(RestrictedPlan);

    private static readonly string[] Others = ["Bram Ullyett"];

    public static Series<Finding> Audit(Site site) => RuleBook.Audit(Plan, site, Others).ToSeries();

    public static Series<Finding> AuditRestricted(Site site) => RuleBook.Audit(RestrictedPlan, site, Others).ToSeries();

    /// <summary>The site of the client with a restriction, with one text in one file replaced.</summary>
    public static Site RestrictedWith(string path, string said, string instead) => With(RestrictedSite, path, said, instead);

    /// <summary>The site with one text in one file replaced wherever it stands; it must stand there.</summary>
    public static Site With(string path, string said, string instead) => With(Site, path, said, instead);

    /// <inheritdoc cref="With(string, string, string)"/>
    public static Site With(Site site, string path, string said, string instead)
    {
        var pages = site.Pages.Select(p => p.Path == path ? p with { Html = Replaced(p.Html) } : p);
        var assets = site.Assets.Select(a =>
            a.Path == path ? a with { Bytes = Encoding.UTF8.GetBytes(Replaced(Encoding.UTF8.GetString(a.Bytes.Span))) } : a
        );
        return new(site.Client, pages, assets);

        string Replaced(string text)
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
            return text.Replace(said, instead, StringComparison.Ordinal);
        }
    }

    /// <summary>Tess's plan and site where every file is as <paramref name="edit"/> makes it.</summary>
    public static (Plan Plan, Site Site) Edited(Func<string, string> edit)
    {
        var practice = ReadPractice(edit);
        var plan = Planned.For(practice, practice.Find(new ClientId("tess"))!);
        return (plan, Rendered(plan));
    }

    public static Site And(this Site site, string path, string text) =>
        path.EndsWith(".html", StringComparison.Ordinal)
            ? new(site.Client, site.Pages.Append(new(path, text)), site.Assets)
            : new(site.Client, site.Pages, site.Assets.Append(new(path, Encoding.UTF8.GetBytes(text))));

    private static Practice ReadPractice(Func<string, string> edit) =>
        PracticeReader
            .Read(SourceFolder.Of(LittlePractice.Files.Select(f => Bytes(KeyValuePair.Create(f.Key, edit(f.Value))))), [])
            .Practice!;

    private static Site Rendered(Plan plan) =>
        SiteRenderer.Render(plan, new Theme("little", LittlePractice.Theme.Select(Bytes)), [])!;

    private static KeyValuePair<string, byte[]> Bytes(KeyValuePair<string, string> file) =>
        KeyValuePair.Create(file.Key, Encoding.UTF8.GetBytes(file.Value));
}
