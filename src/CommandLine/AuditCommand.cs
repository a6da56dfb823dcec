using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus audit FOLDER [--site DIR]</c></summary>
internal static class AuditCommand
{
    public static Command Words(Forms forms)
    {
        var folder = Options.Folder();
        var site = new Option<string?>("--site")
        {
            Description = "Judge the sites published there beside the practice.",
            HelpName = "DIR",
        };
        var clients = Options.Clients();
        var theme = Options.Theme();
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var strict = new Option<bool>("--strict") { Description = "Count warnings as errors." };
        var today = Options.Today();
        var command = new Command("audit", "Checks a practice, and finished sites, and says everything it finds.")
        {
            folder,
            site,
            clients,
            theme,
            format,
            strict,
            today,
        };
        command.SetAction(asked =>
            Run(
                forms,
                asked.GetRequiredValue(folder),
                asked.GetValue(site),
                asked.GetValue(clients) ?? [],
                asked.GetValue(theme),
                asked.GetValue(format) == "json",
                asked.GetValue(strict),
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(
        Forms forms,
        string folder,
        string? sites,
        string[] clients,
        string? themeFolder,
        bool asJson,
        bool strict,
        DateOnly today
    )
    {
        var read = CheckedPractice.Open(folder, clients, today);
        if (sites is not null && !Directory.Exists(sites))
            throw new DirectoryNotFoundException($"There is no folder '{sites}'.");
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        if (themeFolder is not null)
            read.Judge(theme);
        var judged = new HashSet<ClientId>();
        foreach (var (index, id) in read.Wanted.Index())
        {
            Progress.Show($"{index + 1} of {read.Wanted.Count}: {id}");
            if (read.Ready(id) is not { } client)
                continue;
            judged.Add(id);
            var plan = read.PlanOf(client);
            if (sites is not null)
                foreach (var standing in Published(forms, sites, id))
                {
                    var site = standing.Read();
                    if (SiteRenderer.Render(plan, theme, read.Findings, standing.Form.Takes) is { } made)
                        read.Compare(plan, site, made);
                    read.Audit(plan, site);
                }
            else if (SiteRenderer.Render(plan, theme, read.Findings) is { } site)
                read.Audit(plan, site);
        }

        Progress.Clear();
        var findings = read.Said();
        if (asJson)
            Console.Out.WriteLine(FindingJson.Write(findings));
        else
            FindingText.Write(Console.Out, findings, new Excerpts(read.Folder, sites));
        if (sites is not null && !asJson)
        {
            foreach (var id in read.Wanted.Where(id => !judged.Contains(id)))
            foreach (var site in forms.Standing(id, sites))
                Console.Out.WriteLine(
                    $"{id}: an error stands in the way, and {site.Place} is still there, not judged: tell the client."
                );
        }

        return findings.Any(f => f.Level == Level.Error || (strict && f.Level == Level.Warning))
            ? Commands.ErrorsFound
            : Commands.Fine;
    }

    /// <summary>Every form in which the client's site stands there; one at least.</summary>
    private static Series<StandingSite> Published(Forms forms, string sites, ClientId client)
    {
        var standing = forms.Standing(client, sites);
        return standing.Count == 0 ? [StandingSite.At(forms.Usual, client, sites)] : standing;
    }
}
