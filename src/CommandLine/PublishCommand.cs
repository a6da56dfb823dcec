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
        var theme = Options.Theme();
        var form = Options.Choice(
            "--as",
            $"How each site is handed over: {Each(forms)}.",
            [.. forms.InOrder.Select(f => f.Word)]
        );
        var today = Options.Today();
        var command = new Command("publish", "Checks a practice and makes each client's site.")
        {
            folder,
            to,
            clients,
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
                asked.GetValue(theme),
                asked.GetValue(form) is { } word ? forms.Named(word) : forms.Usual,
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
        string? themeFolder,
        IForm form,
        DateOnly today
    )
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var read = CheckedPractice.Open(folder, clients, today);
        if (themeFolder is not null)
            read.Judge(theme);
        var summary = new List<string>();
        using (var target = TargetFolder.Open(to))
        {
            foreach (var (index, id) in read.Wanted.Index())
            {
                Progress.Show($"{index + 1} of {read.Wanted.Count}: {id}");
                summary.Add(Publish(read, theme, id, form, forms, target) + Recorded(read, id, folder, today));
            }
        }

        Progress.Clear();
        var findings = read.Said();
        FindingText.Write(Console.Out, read.ForPeople(findings), new Excerpts(read.Folder, read.Lines, themeFolder));
        foreach (var line in summary)
            Console.Out.WriteLine(line);
        foreach (var stranger in forms.Strangers(to, read.Known))
        {
            foreach (var site in forms.Standing(stranger, to))
                Console.Out.WriteLine(
                    $"{stranger}: no longer in the practice; the site in {site.Place} is still there. "
                        + "Delete it if it should not be."
                );
        }

        if (string.Join(", ", read.Behind(today)) is { Length: > 0 } behind)
            Console.Out.WriteLine($"Changed since their last edition, and not published now: {behind}.");
        return findings.Any(f => f.Level == Level.Error) ? Commands.ErrorsFound : Commands.Fine;
    }

    /// <summary>One client's site made, audited and handed over, or not; the line that says what came of it.</summary>
    private static string Publish(CheckedPractice read, Theme theme, ClientId id, IForm form, Forms forms, TargetFolder target)
    {
        if (read.StoppedOn(id) is { } stopped)
            return Stopped(id, stopped, forms, target);
        if (read.Ready(id) is not { } client)
            return Blocked(id, forms, target);
        var plan = read.PlanOf(client);
        if (SiteRenderer.Render(plan, theme, read.Findings, form.Takes) is not { } site)
            return Blocked(id, forms, target);
        read.Audit(plan, site);
        if (read.Ready(id) is null)
            return Blocked(id, forms, target);
        var result = form.Write(site, target);
        return $"{id}: {form.Said(result)}{Others(id, result, forms, target)}";
    }

    /// <summary>The other forms that stand there: they may hold what the client must not do any more.</summary>
    private static string Others(ClientId id, PublicationResult result, Forms forms, TargetFolder target)
    {
        var others = forms.Standing(id, target.Root).Select(site => site.Place).Where(place => place != result.Place).ToArray();
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
