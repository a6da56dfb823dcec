using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>The little practice, changed in places, from its text to the audit of its sites. The path of an edit says what it
/// changes: a file of the practice, <c>theme/session.html</c>, <c>site/tess/session-1.html</c> after the site was made, or
/// <c>locked/tess/lock.html</c> after the locked one was.</summary>
internal sealed class Trial
{
    private readonly Findings findings = new();
    private readonly Series<Edit> edits;

    private readonly bool asPublished;

    private readonly bool ownTheme;

    private Trial(Series<Edit> edits, bool asPublished, bool ownTheme) =>
        (this.edits, this.asPublished, this.ownTheme) = (edits, asPublished, ownTheme);

    /// <summary>Everything that is found, in the order in which it is said.</summary>
    /// <param name="asPublished">Whether the sites are compared with those that the sources make, as though they had been
    /// published.</param>
    /// <param name="ownTheme">Whether the little theme is judged as one that somebody brings.</param>
    public static Series<Finding> Of(Series<Edit> edits, bool asPublished = false, bool ownTheme = false) =>
        new Trial(edits, asPublished, ownTheme).Run().ToSeries();

    private IEnumerable<Finding> Run()
    {
        var written = edits
            .Where(e => e.Base64 is not null)
            .ToDictionary(e => e.Path, e => Convert.FromBase64String(e.Base64 ?? ""), StringComparer.Ordinal);
        var sources = Edited(LittlePractice.Files, edits.Where(e => PartOf(e) == Part.Practice && !written.ContainsKey(e.Path)))
            .Select(Bytes);
        var reading = PracticeReader.Read(SourceFolder.Of(sources.Concat(written.Select(Weighing))), findings);
        if (reading.Practice is { } practice)
        {
            findings.AddRange(
                RuleBook.Check(
                    practice,
                    Planned.Trainings(practice),
                    LittlePractice.Today,
                    findings.All(f => f.Level != Level.Error)
                )
            );
            var theme = new Theme(
                "little",
                Edited(LittlePractice.Theme, edits.Where(e => PartOf(e) == Part.Theme)).Select(Bytes)
            );
            if (ownTheme)
                findings.AddRange(RuleBook.Judge(theme.Seen));
            foreach (var id in reading.Clients)
                Publish(practice, theme, id);
        }

        var accepted = reading.Practice?.Accepted ?? [];
        var said = new Findings();
        said.AddRange(
            RuleBook.Accept(
                findings,
                accepted,
                [.. Faults.Pages(), .. RuleBook.Pages(), .. SiteRenderer.Pages()],
                LittlePractice.Today
            )
        );
        return said.InOrder();
    }

    /// <summary>Bytes behind the end are no part of a picture.</summary>
    private KeyValuePair<string, byte[]> Weighing(KeyValuePair<string, byte[]> file)
    {
        var bytes = file.Value;
        if (edits.FirstOrDefault(e => e.Path == file.Key && e.KiB is not null)?.KiB is { } weight)
            Array.Resize(ref bytes, weight * 1024);
        return KeyValuePair.Create(file.Key, bytes);
    }

    private void Publish(Practice practice, Theme theme, ClientId id)
    {
        var own = edits.Where(e => e.Path.StartsWith($"site/{id}/", StringComparison.Ordinal)).ToSeries();
        var blocked = findings.Block(id, Reach.Of(practice));
        if (blocked || practice.Find(id) is not { } client)
        {
            if (own.Count > 0)
                throw new InvalidOperationException($"'{own[0].Path}' cannot be edited: {id} is blocked.");
            return;
        }

        var plan = Planned.For(practice, client);
        if (SiteRenderer.Render(plan, theme, findings) is not { } site)
            return;
        var others = practice.Clients.Where(c => c.Id != id).Select(c => c.Name);
        var edited = Edited(site, own);
        if (asPublished)
            findings.AddRange(RuleBook.Compare(plan, edited, site));
        findings.AddRange(RuleBook.Audit(plan, edited, others));
        // The little theme has no page that holds all others.
        var locked = edits.Where(e => e.Path.StartsWith($"locked/{id}/", StringComparison.Ordinal)).ToSeries();
        if (locked.Count > 0 && SiteRenderer.Render(plan, ThemeFolder.Plain(), findings, Rendition.Locked) is { } around)
            findings.AddRange(RuleBook.Audit(plan, Edited(around, locked), others));
    }

    /// <summary>A file of the site that no edit names stays as it is: it may be no text.</summary>
    private static Site Edited(Site site, Series<Edit> edits)
    {
        var named = edits.Select(e => e.Path.Split('/', 3)[2]).ToHashSet(StringComparer.Ordinal);
        var texts = site
            .Pages.Select(p => KeyValuePair.Create(p.Path, p.Html))
            .Concat(
                site.Assets.Where(a => named.Contains(a.Path))
                    .Select(a => KeyValuePair.Create(a.Path, Encoding.UTF8.GetString(a.Bytes.Span)))
            );
        var edited = Edited(texts, edits);
        return new(
            site.Client,
            edited.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal)).Select(f => new Page(f.Key, f.Value)),
            edited
                .Where(f => !f.Key.EndsWith(".html", StringComparison.Ordinal))
                .Select(f => new Asset(f.Key, Encoding.UTF8.GetBytes(f.Value)))
                .Concat(site.Assets.Where(a => !named.Contains(a.Path)))
        );
    }

    private static SortedDictionary<string, string> Edited(
        IEnumerable<KeyValuePair<string, string>> files,
        IEnumerable<Edit> edits
    )
    {
        var edited = new SortedDictionary<string, string>(files.ToDictionary(), StringComparer.Ordinal);
        foreach (var edit in edits)
        {
            var path = PartOf(edit) switch
            {
                Part.Site or Part.Locked => edit.Path.Split('/', 3)[2],
                Part.Theme => edit.Path["theme/".Length..],
                _ => edit.Path,
            };
            edited[path] = edit.Apply(edited.GetValueOrDefault(path));
        }

        return edited;
    }

    private static KeyValuePair<string, byte[]> Bytes(KeyValuePair<string, string> file) =>
        KeyValuePair.Create(file.Key, Encoding.UTF8.GetBytes(file.Value));

    private static Part PartOf(Edit edit) =>
        edit.Path.Split('/')[0] switch
        {
            "site" => Part.Site,
            "locked" => Part.Locked,
            "theme" => Part.Theme,
            _ => Part.Practice,
        };

    private enum Part
    {
        Practice,
        Theme,
        Site,
        Locked,
    }
}
