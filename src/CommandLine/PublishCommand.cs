using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus publish FOLDER --to DIR</c></summary>
internal static class PublishCommand
{
    public static Command Words(Forms forms)
    {
        var folder = Options.Folder();
        var to = new Option<string>("--to")
        {
            Description = "Where the sites go: one folder for each client.",
            HelpName = "DIR",
            Required = true,
        };
        var clients = Options.Clients();
        var part = Options.Part();
        var theme = Options.Theme();
        var form = Options.Choices(
            "--as",
            $"How each site is handed over: {Each(forms)}; several with commas between them.",
            [.. forms.InOrder.Select(f => f.Word)]
        );
        var today = Options.Today();
        var command = new Command("publish", "Checks a practice and makes each client's site.")
        {
            folder,
            to,
            clients,
            part,
            form,
            theme,
            today,
        };
        command.SetAction(asked =>
            Run(
                forms,
                asked.GetRequiredValue(folder),
                asked.GetRequiredValue(to),
                asked.GetValue(clients) ?? [],
                asked.GetValue(part),
                asked.GetValue(theme),
                forms.InOrder.Where(f => (asked.GetValue(form) ?? [forms.Usual.Word]).Contains(f.Word)).ToSeries(),
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static string Each(Forms forms)
    {
        var all = forms.InOrder.Select(f => f.Help).ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])}, or {all[^1]}";
    }

    private static int Run(
        Forms forms,
        string folder,
        string to,
        string[] clients,
        Share? part,
        string? themeFolder,
        Series<IForm> asked,
        DateOnly today
    )
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var read = CheckedPractice.Open(folder, clients, today, part);
        if (themeFolder is not null)
            read.Judge(theme);
        var summary = new List<string>();
        string? forgotten;
        using (var target = TargetFolder.Open(to))
        {
            var records = new SiteRecords(target.Root);
            var making = new SiteMaking(read, theme, asked, target.Root);
            // Who is ready is settled first: what is found on one client's pages is added while others are made.
            var ready = read.Wanted.Select(id => (Id: id, Client: read.StoppedOn(id) is null ? read.Ready(id) : null)).ToArray();
            var made = AtOnce.InOrder(ready, who => (who.Id, Sites: who.Client is null ? [] : making.Of(who.Client)));
            foreach (var (index, (id, sites)) in made.Index())
            {
                Progress.Show($"{index + 1} of {ready.Length}: {id}");
                summary.Add(Publish(read, id, sites, asked, forms, target, records) + Recorded(read, id, folder, today));
            }

            records.Forget(forms);
            forgotten = records.Trouble;
        }

        Progress.Clear();
        var findings = read.Said();
        FindingText.Write(Console.Out, read.ForPeople(findings), new Excerpts(read.Folder, read.Lines, themeFolder));
        foreach (var line in summary)
            Console.Out.WriteLine(line);
        if (forgotten is not null)
            Console.Out.WriteLine(
                $"warning: what was made is not remembered beside the sites, because {forgotten}; the next run makes it "
                    + "again."
            );
        if (part is null or { IsFirst: true })
            foreach (var stranger in forms.Strangers(to, read.Known))
            foreach (var site in forms.Standing(stranger, to))
                Console.Out.WriteLine(
                    $"{stranger}: no longer in the practice; the site in {site.Place} is still there. "
                        + "Delete it if it should not be."
                );
        if (string.Join(", ", read.Behind(today)) is { Length: > 0 } behind)
            Console.Out.WriteLine($"Changed since their last edition, and not published now: {behind}.");
        return findings.Any(f => f.Level == Level.Error) ? Commands.ErrorsFound : Commands.Fine;
    }

    /// <summary>One client's sites handed over, or not; the lines that say what came of it.</summary>
    private static string Publish(
        CheckedPractice read,
        ClientId id,
        Series<MadeSite> sites,
        Series<IForm> asked,
        Forms forms,
        TargetFolder target,
        SiteRecords records
    )
    {
        if (read.StoppedOn(id) is { } stopped)
            return Stopped(id, stopped, forms, target);
        if (read.Ready(id) is null)
            return Blocked(id, forms, target);
        foreach (var site in sites)
            read.Add(id, site);
        if (read.Ready(id) is null)
        {
            foreach (var site in sites.Where(s => s.Standing is null && s.Site is not null))
                records.Keep(id, site.Rendition, new(site.Key, "", [], site.Found, site.Lines));
            return Blocked(id, forms, target);
        }

        var results = sites.SelectMany(site => HandedOver(id, site, asked, target, records)).ToArray();
        return string.Join('\n', results.Select(r => $"{id}: {r.Form.Said(r.Result)}"))
            + Others(id, [.. results.Select(r => r.Result.Place)], forms, target);
    }

    /// <summary>One rendition in each form that takes it, and its record.</summary>
    private static Series<(IForm Form, PublicationResult Result)> HandedOver(
        ClientId id,
        MadeSite made,
        Series<IForm> asked,
        TargetFolder target,
        SiteRecords records
    )
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
        var results = own.Select(form => (Form: form, Result: form.Write(site, target))).ToSeries();
        records.Keep(
            id,
            made.Rendition,
            new(
                made.Key,
                SiteHash.Of(site),
                results.Select(r => StandingForm.Of(r.Form, r.Result)).ToSeries(),
                made.Found,
                made.Lines
            )
        );
        return results;
    }

    /// <summary>The other forms that stand there: they may hold what the client must not do any more.</summary>
    private static string Others(ClientId id, string[] written, Forms forms, TargetFolder target)
    {
        var others = forms.Standing(id, target.Root).Select(site => site.Place).Except(written).ToArray();
        return others.Length == 0
            ? ""
            : $"\n{id}: another form is still there, as it was published before: {string.Join(", ", others)}. Publish it "
                + "again, or delete it.";
    }

    /// <summary>Records what was published, unless the last edition is the same. The site is in its place by then: where this
    /// is cut off, the next run does it. What could not be recorded blocks nobody.</summary>
    private static string Recorded(CheckedPractice read, ClientId id, string folder, DateOnly today)
    {
        if (
            read.StoppedOn(id) is not null
            || read.Ready(id) is not { } client
            || read.EditionOf(client, today) is not { } edition
        )
            return "";
        if (EditionRecord.Write(folder, id, edition) is { } reason)
            return $"\n{id}: warning: edition {edition.Number} is not recorded, because {reason}; the next run records it.";
        return edition.Number == 1
            ? ""
            : $"\n{id}: edition {edition.Number} is recorded; 'gradus compare {folder} --client {id} {edition.Number - 1} "
                + $"{edition.Number}' shows what is other.";
    }

    /// <summary>Nothing is made for who has stopped, and nothing deleted: what stands is named.</summary>
    private static string Stopped(ClientId id, DateOnly on, Forms forms, TargetFolder target) =>
        forms.DateOf(id, target.Root) is { } date
            ? $"{id}: stopped on {on.Iso()}; the site of {date.Iso()} is still there: tell the client."
                + string.Concat(forms.Standing(id, target.Root).Select(site => $"\n  {site.Place}"))
            : $"{id}: stopped on {on.Iso()}.";

    private static string Blocked(ClientId id, Forms forms, TargetFolder target) =>
        forms.DateOf(id, target.Root) is { } date
            ? $"{id}: NOT published; the site of {date.Iso()} is still there: tell the client."
            : $"{id}: NOT published.";
}
