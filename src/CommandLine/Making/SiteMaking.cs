using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>Makes and judges sites, of several clients at a time, and nothing twice: what was made and judged from the same by
/// the same program, and is recorded, is taken from the record.</summary>
internal sealed class SiteMaking
{
    private readonly CheckedPractice read;
    private readonly Theme theme;
    private readonly Series<IForm> forms;
    private readonly SiteRecords records;
    private readonly string target;
    private readonly string others;

    /// <param name="forms">Those in which the sites are to be handed over.</param>
    /// <param name="target">Where they stand.</param>
    /// <param name="records">Those of the target.</param>
    public SiteMaking(CheckedPractice read, Theme theme, Series<IForm> forms, string target, SiteRecords records)
    {
        (this.read, this.theme, this.forms, this.target, this.records) = (read, theme, forms, target, records);
        others = TextHash.Of(read.Names);
    }

    /// <summary>Each rendition that the forms take, all pages first; what is found stops it.</summary>
    public Series<MadeSite> Of(Client client)
    {
        var plan = new Lazy<Plan>(() => read.PlanOf(client));
        var hash = read.PlanHashOf(client, () => plan.Value);
        var made = new List<MadeSite>();
        foreach (var rendition in forms.Select(f => f.Takes).Distinct().Order())
        {
            made.Add(Of(client.Id, plan, rendition, KeyOf(hash, rendition), made.FirstOrDefault()));
            if (made[^1].IsWrong)
                break;
        }

        return made.ToSeries();
    }

    /// <summary>The pages of a client, made and judged, whatever is recorded.</summary>
    public MadeSite New(Client client) => Made(read.PlanOf(client), Rendition.Pages, "", null);

    /// <summary>What is found on the sites of a client that stand already, each beside what would be made now.</summary>
    /// <exception cref="HandOverException">One of them is none, or cannot be read.</exception>
    public Series<MadeSite> Judge(Client client, IEnumerable<StandingSite> standing)
    {
        var plan = read.PlanOf(client);
        return standing.Select(site => site.Form.IsReadable ? Judged(plan, site) : Known(plan, site)).ToSeries();
    }

    /// <summary>What cannot be looked into was judged before it was locked: it is known again by its bytes, or it is not
    /// known.</summary>
    private MadeSite Known(Plan plan, StandingSite standing)
    {
        var rendition = standing.Form.Takes;
        var key = KeyOf(plan.Hash(), rendition);
        return Recorded(plan.Client, rendition, key) is { } record && Stands(plan.Client, record, standing.Form)
            ? new(rendition, key, null, record, record.Found, record.Lines)
            : new(rendition, key, null, null, [RuleBook.NotKnown(plan.Client, Path.GetFileName(standing.Place))], []);
    }

    private MadeSite Judged(Plan plan, StandingSite standing)
    {
        var rendition = standing.Form.Takes;
        var (key, site, found) = (KeyOf(plan.Hash(), rendition), standing.Read(), new Findings());
        if (SiteRenderer.Render(plan, theme, found, rendition) is not { } made)
            return new(rendition, key, site, null, [.. found, .. read.FoundOn(plan, site)], []);
        found.AddRange(RuleBook.Compare(plan, site, made));
        // These very bytes were judged by this version where they are those that it makes, and it has written down that it did.
        var judged =
            found.Count == 0 && Recorded(plan.Client, rendition, key) is { } record && record.Site == SiteHash.Of(made)
                ? new(rendition, key, site, record, record.Found, record.Lines)
                : Judged(plan, site, rendition, key);
        return judged with { Found = [.. found, .. judged.Found] };
    }

    /// <param name="plan">Is asked for where something is to be made.</param>
    private MadeSite Of(ClientId client, Lazy<Plan> plan, Rendition rendition, string key, MadeSite? pages)
    {
        var record = Recorded(client, rendition, key);
        if (
            record is not null
            && (
                record.Found.Any(f => f.Level == Level.Error)
                || forms.Where(f => f.Takes == rendition).All(f => Stands(client, record, f))
            )
        )
            return new(rendition, key, null, record, record.Found, record.Lines);
        // The page that holds all others is among the pages, and was judged with them. What of the findings is its own nobody can
        // tell, so that it has no key where there are some.
        if (rendition != Rendition.Pages && pages?.Site?.Pages.FirstOrDefault(p => p.Path == PagePath.AllPages) is { } whole)
            return new(
                rendition,
                pages.Found.Count == 0 ? key : "",
                rendition == Rendition.Locked ? SiteRenderer.Locked(plan.Value, whole) : new(client, [whole], []),
                null,
                [],
                []
            );
        return Made(plan.Value, rendition, key, record);
    }

    private MadeSite Made(Plan plan, Rendition rendition, string key, SiteRecord? record)
    {
        var found = new Findings();
        if (SiteRenderer.Render(plan, theme, found, rendition) is not { } site)
            return new(rendition, key, null, null, found.ToSeries(), []);
        return record is not null && record.Site == SiteHash.Of(site)
            ? new(rendition, key, site, null, record.Found, record.Lines)
            : Judged(plan, site, rendition, key);
    }

    private bool Stands(ClientId client, SiteRecord record, IForm form) =>
        form.MayStand
        && record.In(form) is { } standing
        && standing.Hash == form.HashOf(StandingSite.At(form, client, target).Place);

    private MadeSite Judged(Plan plan, Site site, Rendition rendition, string key)
    {
        var found = read.FoundOn(plan, site);
        return new(rendition, key, site, null, found, PageLines.Of(site, found));
    }

    /// <summary>What is recorded of the same made from the same. Where a finding is at a file of the practice, its line may have
    /// moved since.</summary>
    private SiteRecord? Recorded(ClientId client, Rendition rendition, string key) =>
        records.Read(client, rendition) is { } record && record.Key == key && !record.Found.Any(f => read.Folder.Has(f.At.File))
            ? record
            : null;

    private string KeyOf(string plan, Rendition rendition) =>
        TextHash.Whole($"{ProgramVersion.Hash}\n{plan}\n{theme.Seen.Digest}\n{rendition}\n{others}");
}
