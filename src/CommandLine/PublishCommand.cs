using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus publish FOLDER --to DIR</c></summary>
internal static class PublishCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var to = new Option<string>("--to") { Description = "Where the sites go: one folder for each client.", HelpName = "DIR", Required = true };
        var clients = Options.Clients();
        var theme = new Option<string?>("--theme") { Description = "A theme of your own instead of the plain one.", HelpName = "DIR" };
        var form = Options.Choice("--as", "How each site is handed over: as a folder, or as one zip file.", "folder", "zip");
        var today = Options.Today();
        var command = new Command("publish", "Checks a practice and makes each client's site.") { folder, to, clients, form, theme, today };
        command.SetAction(asked => Run(
            asked.GetRequiredValue(folder), asked.GetRequiredValue(to), asked.GetValue(clients) ?? [], asked.GetValue(theme), asked.GetValue(form) == "zip", asked.GetValue(today) ?? Calendar.Today()));
        return command;
    }

    private static int Run(string folder, string to, string[] clients, string? themeFolder, bool asZip, DateOnly today)
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var desk = Desk.Open(folder, clients, today);
        var summary = new List<string>();
        using (var target = TargetFolder.Open(to))
        {
            foreach (var (index, id) in desk.Wanted.Index())
            {
                Progress.Show($"{index + 1} of {desk.Wanted.Count}: {id}");
                summary.Add(Publish(desk, theme, id, asZip, target));
            }
        }

        Progress.Clear();
        var findings = desk.Said();
        FindingText.Write(Console.Out, findings, new Excerpts(desk.Folder, themeFolder));
        foreach (var line in summary) Console.Out.WriteLine(line);
        foreach (var stranger in Publication.Strangers(to, desk.Known))
        {
            foreach (var place in Publication.PlacesOf(stranger, to))
                Console.Out.WriteLine($"{stranger}: no longer in the practice; the site in {place} is still there. Delete it if it should not be.");
        }

        return findings.Any(f => f.Level == Level.Error) ? Commands.ErrorsFound : Commands.Fine;
    }

    /// <summary>One client's site made, audited and handed over, or not; the line that says what came of it.</summary>
    private static string Publish(Desk desk, Theme theme, ClientId id, bool asZip, TargetFolder target)
    {
        if (desk.Ready(id) is not { } client || desk.Practice is not { } practice) return Blocked(id, target);
        var plan = Plan.For(practice, client);
        if (SiteRenderer.Render(plan, theme, desk.Findings) is not { } site) return Blocked(id, target);
        desk.Audit(plan, site);
        if (desk.Ready(id) is null) return Blocked(id, target);
        var result = asZip ? Publication.WriteZip(site, target) : Publication.Write(site, target);
        var where = asZip ? result.Place : Path.Combine(result.Place, Plan.HomePath);
        return result.Changed
            ? $"{id}: {result.Pages} pages, {result.Written.Count} files new or changed: {where}"
            : $"{id}: {result.Pages} pages, nothing changed: {where}";
    }

    private static string Blocked(ClientId id, TargetFolder target) => Publication.DateOf(id, target) is { } date
        ? $"{id}: NOT published; the site of {date:yyyy-MM-dd} is still there: tell the client."
        : $"{id}: NOT published.";
}
