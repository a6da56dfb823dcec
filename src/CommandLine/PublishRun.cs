using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>One run of <c>gradus publish</c>.</summary>
/// <param name="folder">The practice, as it was written on the command line.</param>
/// <param name="to">Where the sites go, as it was written.</param>
/// <param name="clients">The ids of those whom it is about; everybody where there is none.</param>
/// <param name="themeFolder">Null for the theme that comes with Gradus.</param>
/// <param name="formsAsked">Those of the forms offered in which the sites are handed over, beside a link.</param>
internal sealed class PublishRun(
    Forms offered,
    string folder,
    string to,
    string[] clients,
    Share? part,
    string? themeFolder,
    Series<IForm> formsAsked,
    Linking linking,
    DateOnly today
)
{
    private readonly Forms forms = new([.. offered.InOrder, linking.Form]);
    private readonly Series<IForm> asked = linking.IsAsked ? [.. formsAsked, linking.Form] : formsAsked;
    private readonly SiteRecords records = new(to);

    /// <summary>The practice may be read twice: the second time only what was written meanwhile.</summary>
    private readonly KeptReadings kept = new();
    private bool hasWrittenSource;

    /// <summary>Publishes, and says what came of it; the exit status.</summary>
    public int Status()
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var read = Open();
        if (themeFolder is not null)
            read.Judge(theme);
        linking.Settle(read.Practice?.Clients ?? [], read.Wanted);
        var summary = new List<string>();
        using (var target = TargetFolder.Open(to))
        {
            var making = new SiteMaking(read, theme, asked, target.Root, records);
            // Who is ready is settled first: what is found on one client's pages is added while others are made.
            var ready = read.Wanted.Select(id => (Id: id, Client: read.StoppedOn(id) is null ? read.Ready(id) : null)).ToArray();
            var made = AtOnce.InOrder(ready, who => (who.Id, Sites: who.Client is null ? [] : making.Of(who.Client)));
            foreach (var (index, (id, sites)) in made.Index())
            {
                Progress.Show($"{index + 1} of {ready.Length}: {id}");
                summary.Add(Publish(read, id, sites, target) + Recorded(read, id));
            }

            Remember(read);
        }

        Progress.Clear();
        return Say(read, summary);
    }

    private CheckedPractice Open() => CheckedPractice.Open(folder, clients, today, part, records, kept);

    /// <summary>What was worked out of the sources is recorded for the next run. An edition or a link that was written down is
    /// one of the next run's sources: then they are read as it will find them.</summary>
    private void Remember(CheckedPractice read)
    {
        try
        {
            var next = hasWrittenSource ? Open() : read;
            foreach (var (id, record) in AtOnce.InOrder(next.Wanted, id => (id, next.RecordOf(id))))
            {
                if (record is not null)
                    records.Keep(id, record);
            }
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            // Somebody took the practice away meanwhile: there is nothing to remember.
        }

        records.Forget(forms);
    }

    private int Say(CheckedPractice read, IEnumerable<string> summary)
    {
        var findings = read.Said();
        FindingText.Write(Console.Out, read.ForPeople(findings), new Excerpts(read.Folder, read.Lines, themeFolder));
        foreach (var line in summary)
            Console.Out.WriteLine(line);
        if (records.Trouble is { } forgotten)
            Console.Out.WriteLine(
                $"warning: what was made is not remembered beside the sites, because {forgotten}; the next run makes it "
                    + "again."
            );
        if (part is null or { IsFirst: true })
            foreach (var line in NobodysNow(read))
                Console.Out.WriteLine(line);
        if (string.Join(", ", read.Behind(today)) is { Length: > 0 } behind)
            Console.Out.WriteLine($"Changed since their last edition, and not published now: {behind}.");
        return findings.Any(f => f.Level == Level.Error) ? Commands.ErrorsFound : Commands.Fine;
    }

    /// <summary>What stands there of people who are not in the practice any more, or under links that nobody has. It is named,
    /// never deleted.</summary>
    private IEnumerable<string> NobodysNow(CheckedPractice read) =>
        forms
            .Strangers(to, read.Known)
            .SelectMany(id => forms.Standing(id, to))
            .Select(site =>
                $"{site.Client}: no longer in the practice; the site in {site.Place} is still there. "
                + "Delete it if it should not be."
            )
            .Concat(
                (read.Practice is null ? [] : LinkForm.Strangers(to, linking.All)).Select(place =>
                    $"{place}: no link leads here any more. Delete it, here and on the host."
                )
            );

    /// <summary>One client's sites handed over, or not; the lines that say what came of it.</summary>
    private string Publish(CheckedPractice read, ClientId id, Series<MadeSite> sites, TargetFolder target)
    {
        if (read.StoppedOn(id) is { } stopped)
            return Stopped(id, stopped, target);
        if (read.Ready(id) is null)
            return Blocked(id, target);
        foreach (var site in sites)
            read.Add(id, site);
        if (read.Ready(id) is null)
        {
            foreach (var site in sites.Where(s => s.Standing is null && s.Site is not null))
                records.Keep(id, site.Rendition, new(site.Key, "", [], site.Found, site.Lines));
            return Blocked(id, target);
        }

        if (linking.IsAsked)
            hasWrittenSource |= linking.Keep(folder, id);
        var results = sites.SelectMany(site => HandedOver(id, site, target)).ToArray();
        return string.Join('\n', results.Select(r => $"{id}: {r.Form.Said(r.Result)}"))
            + linking.Ended(id, target.Root)
            + Others(id, [.. results.Select(r => r.Result.Place)], target);
    }

    /// <summary>One rendition in each form that takes it, and its record.</summary>
    private Series<(IForm Form, PublicationResult Result)> HandedOver(ClientId id, MadeSite made, TargetFolder target)
    {
        var own = asked.Where(form => form.Takes == made.Rendition);
        if (made is not { Site: { } site })
            return own.Select(form =>
                    (
                        form,
                        PublicationResult.Unchanged(
                            id,
                            StandingSite.At(form, id, target.Root).Place,
                            made.Standing?.In(form) ?? throw new InvalidOperationException($"No site of {id}.")
                        )
                    )
                )
                .ToSeries();
        var hash = SiteHash.Of(site);
        var before = records.Read(id, made.Rendition);
        var results = own.Select(form => (Form: form, Result: Kept(form) ?? form.Write(site, target))).ToSeries();
        records.Keep(
            id,
            made.Rendition,
            new(made.Key, hash, results.Select(r => StandingForm.Of(r.Form, r.Result)).ToSeries(), made.Found, made.Lines)
        );
        return results;

        // The same site stands there, though something else that it is known by is new: what is locked is not locked anew.
        PublicationResult? Kept(IForm form) =>
            form.MayStand
            && before?.Site == hash
            && before.In(form) is { } standing
            && StandingSite.At(form, id, target.Root).Place is var place
            && form.HashOf(place) == standing.Hash
                ? PublicationResult.Unchanged(id, place, standing)
                : null;
    }

    /// <summary>The other forms that stand there: they may hold what the client must not do any more.</summary>
    private string Others(ClientId id, string[] written, TargetFolder target)
    {
        var others = forms.Standing(id, target.Root).Select(site => site.Place).Except(written).ToArray();
        return others.Length == 0
            ? ""
            : $"\n{id}: another form is still there, as it was published before: {string.Join(", ", others)}. Publish it "
                + "again, or delete it.";
    }

    /// <summary>Records what was published, unless the last edition is the same. The site is in its place by then: where this
    /// is cut off, the next run does it. What could not be recorded blocks nobody.</summary>
    private string Recorded(CheckedPractice read, ClientId id)
    {
        if (
            read.StoppedOn(id) is not null
            || read.Ready(id) is not { } client
            || read.EditionOf(client, today) is not { } edition
        )
            return "";
        if (EditionRecord.Write(folder, id, edition) is { } reason)
            return $"\n{id}: warning: edition {edition.Number} is not recorded, because {reason}; the next run records it.";
        hasWrittenSource = true;
        return edition.Number == 1
            ? ""
            : $"\n{id}: edition {edition.Number} is recorded; 'gradus compare {folder} --client {id} {edition.Number - 1} "
                + $"{edition.Number}' shows what is other.";
    }

    /// <summary>Nothing is made for who has stopped, and nothing deleted: what stands is named.</summary>
    private string Stopped(ClientId id, DateOnly on, TargetFolder target) =>
        forms.DateOf(id, target.Root) is { } date
            ? $"{id}: stopped on {on.Iso()}; the site of {date.Iso()} is still there: tell the client."
                + string.Concat(forms.Standing(id, target.Root).Select(site => $"\n  {site.Place}"))
            : $"{id}: stopped on {on.Iso()}.";

    private string Blocked(ClientId id, TargetFolder target) =>
        forms.DateOf(id, target.Root) is { } date
            ? $"{id}: NOT published; the site of {date.Iso()} is still there: tell the client."
            : $"{id}: NOT published.";
}
