using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A finished site that breaks are tried on, and how it is judged.</summary>
internal sealed record ProofSite(string Name, Plan Plan, Site Site, AuditRun Run)
{
    /// <summary>Clients who are in no practice: some have names that a proof needs.</summary>
    public static readonly Series<string> Others = ["Gwendolen Ashcombe-Pryor", "Ed", "Cecily Ormond", "Józef Wren"];

    /// <summary>How many of all sites are small.</summary>
    public const int Small = 3;

    private static readonly Lazy<Series<ProofSite>> Made = new(() => MakeAll().ToSeries());

    /// <summary>The small ones first: most breaks are tried on them.</summary>
    public static Series<ProofSite> All => Made.Value;

    public bool IsOneFile { get; } = Site.Pages is [{ Path: PagePath.AllPages }];

    /// <summary>The pages in it, whatever files they stand in.</summary>
    public Series<string> Paths => PagePathsOf(Plan).Where(path => IsOneFile || Site.Pages.Any(p => p.Path == path)).ToSeries();

    public string FileOf(string path) => IsOneFile ? PagePath.AllPages : path;

    public string Html(string path) => Site.Pages.Single(p => p.Path == FileOf(path)).Html;

    /// <summary>The site with another text in a page, and the list of its files kept true.</summary>
    public Site With(string path, string html) =>
        Listed(Site.Pages.Select(p => p.Path == path ? p with { Html = html } : p), Site.Assets);

    /// <summary>The site with another file; null where it has no such file, or the same.</summary>
    public Site? WithFile(string path, Func<string, string> change)
    {
        if (Site.Assets.FirstOrDefault(a => a.Path == path) is not { } asset)
            return null;
        var before = Encoding.UTF8.GetString(asset.Bytes.Span);
        var after = change(before);
        return after == before
            ? null
            : Listed(Site.Pages, Site.Assets.Select(a => a.Path == path ? new Asset(path, Encoding.UTF8.GetBytes(after)) : a));
    }

    public string? Text(string path) =>
        Site.Assets.FirstOrDefault(a => a.Path == path) is { } asset ? Encoding.UTF8.GetString(asset.Bytes.Span) : null;

    /// <summary>A site whose list of files agrees with them: somebody who alters a page can alter that too.</summary>
    public Site Listed(IEnumerable<Page> pages, IEnumerable<Asset> assets)
    {
        var (all, files) = (pages.ToArray(), assets.ToArray());
        var list = Encoding.UTF8.GetBytes(FileList.Of(all, files));
        return new(Site.Client, all, files.Select(a => a.Path == PagePath.FileList ? new Asset(a.Path, list) : a));
    }

    /// <summary>What is found in a site instead of this one: the rules, errors alone, or warnings too.</summary>
    public Series<Finding> Found(Site broken) => ProofRecord.Kept(Name, broken, RuleBook.Audit(Plan, broken, Run).ToSeries());

    public bool IsSeenByComparison(Site broken) => RuleBook.Compare(Plan, broken, Site).Any();

    private static IEnumerable<string> PagePathsOf(Plan plan) =>
        plan
            .Sessions.Select(s => s.Path)
            .Concat(plan.Exercises.Select(e => e.Path))
            .Prepend(PagePath.Weeks)
            .Prepend(PagePath.BeforeYouStart)
            .Prepend(PagePath.Home);

    private static IEnumerable<ProofSite> MakeAll()
    {
        var little = PracticeReader.Read(SourceFolder.Of(LittlePractice.Files.Select(Bytes)), []).Practice!;
        var demonstration = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;
        var (plain, simple) = (ThemeFolder.Plain(), new Theme("little", LittlePractice.Theme.Select(Bytes)));
        yield return Of("tess, plain", little, "tess", plain, Rendition.Pages);
        yield return Of("tess, one file", little, "tess", plain, Rendition.OneFile);
        yield return Of("bram, little", little, "bram", simple, Rendition.Pages);
        yield return Of("hedley", demonstration, "hedley", plain, Rendition.Pages);
        yield return Of("nuala, one file", demonstration, "nuala", plain, Rendition.OneFile);
        yield return Of("rufus", demonstration, "rufus", plain, Rendition.Pages);
        yield return Of("maud, one file", demonstration, "maud", plain, Rendition.OneFile);
        yield return Of("tamsin", demonstration, "tamsin", plain, Rendition.Pages);
    }

    private static ProofSite Of(string name, Practice practice, string client, Theme theme, Rendition form)
    {
        var plan = Planned.For(practice, practice.Find(new ClientId(client))!);
        var site = SiteRenderer.Render(plan, theme, [], form)!;
        if (form == Rendition.Pages && site.Pages.Any(p => p.Path == PagePath.AllPages))
        {
            // The one file is tried by itself; beside the pages it would only be read over again.
            var bare = new ProofSite(name, plan, site, new([]));
            site = bare.Listed(site.Pages.Where(p => p.Path != PagePath.AllPages), site.Assets);
        }

        return new(name, plan, site, new([.. practice.Clients.Select(c => c.Name), .. Others]));
    }

    private static KeyValuePair<string, byte[]> Bytes(KeyValuePair<string, string> file) =>
        KeyValuePair.Create(file.Key, Encoding.UTF8.GetBytes(file.Value));
}
