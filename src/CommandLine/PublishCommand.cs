using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus publish FOLDER --to DIR</c></summary>
internal static class PublishCommand
{
    public static Command Words()
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
            "How each site is handed over: as a folder, as one zip file, or as one page that needs no other file.",
            "folder",
            "zip",
            "file"
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
                asked.GetRequiredValue(folder),
                asked.GetRequiredValue(to),
                asked.GetValue(clients) ?? [],
                asked.GetValue(theme),
                asked.GetValue(form) ?? "folder",
                asked.GetValue(today) ?? Calendar.Today()
            )
        );
        return command;
    }

    private static int Run(string folder, string to, string[] clients, string? themeFolder, string form, DateOnly today)
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var desk = Desk.Open(folder, clients, today);
        var summary = new List<string>();
        using (var target = TargetFolder.Open(to))
        {
            foreach (var (index, id) in desk.Wanted.Index())
            {
                Progress.Show($"{index + 1} of {desk.Wanted.Count}: {id}");
                summary.Add(Publish(desk, theme, id, form, target));
            }
        }

        Progress.Clear();
        var findings = desk.Said();
        FindingText.Write(Console.Out, findings, new Excerpts(desk.Folder, themeFolder));
        foreach (var line in summary)
            Console.Out.WriteLine(line);
        foreach (var stranger in Publication.Strangers(to, desk.Known))
        {
            foreach (var place in Publication.PlacesOf(stranger, to))
                Console.Out.WriteLine(
                    $"{stranger}: no longer in the practice; the site in {place} is still there. Delete it if it should not be."
                );
        }

        return findings.Any(f => f.Level == Level.Error) ? Commands.ErrorsFound : Commands.Fine;
    }

    /// <summary>One client's site made, audited and handed over, or not; the line that says what came of it.</summary>
    private static string Publish(Desk desk, Theme theme, ClientId id, string form, TargetFolder target)
    {
        if (desk.Ready(id) is not { } client)
            return Blocked(id, target);
        var plan = desk.PlanOf(client);
        if (
            (
                form == "file"
                    ? SiteRenderer.RenderInOne(plan, theme, desk.Findings)
                    : SiteRenderer.Render(plan, theme, desk.Findings)
            )
            is not { } site
        )
            return Blocked(id, target);
        desk.Audit(plan, site);
        if (desk.Ready(id) is null)
            return Blocked(id, target);
        var result = form switch
        {
            "zip" => Publication.WriteZip(site, target),
            "file" => Publication.WritePage(site, target),
            _ => Publication.Write(site, target),
        };
        return $"{id}: {Said(result, form)}{Others(id, result, target)}";
    }

    private static string Said(PublicationResult result, string form)
    {
        var changed = result.Changed
            ? form == "file"
                ? "new or changed"
                : $"{result.Written.Count} files new or changed"
            : "nothing changed";
        return $"{(form == "file" ? "one page" : $"{result.Pages} pages")}, {changed}: "
            + $"{(form == "folder" ? Path.Combine(result.Place, Plan.HomePath) : result.Place)}";
    }

    /// <summary>The other forms that stand there: they may hold what the client must not do any more.</summary>
    private static string Others(ClientId id, PublicationResult result, TargetFolder target)
    {
        var others = Publication.PlacesOf(id, target.Root).Where(place => place != result.Place).ToArray();
        return others.Length == 0
            ? ""
            : $"\n{id}: another form is still there, as it was published before: {string.Join(", ", others)}. Publish it "
                + "again, or delete it.";
    }

    private static string Blocked(ClientId id, TargetFolder target) =>
        Publication.DateOf(id, target) is { } date
            ? $"{id}: NOT published; the site of {date.Iso()} is still there: tell the client."
            : $"{id}: NOT published.";
}
