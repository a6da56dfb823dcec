using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus audit FOLDER [--site DIR]</c></summary>
internal static class AuditCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var site = new Option<string?>("--site") { Description = "Judge the sites published there beside the practice.", HelpName = "DIR" };
        var clients = Options.Clients();
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var strict = new Option<bool>("--strict") { Description = "Count warnings as errors." };
        var today = Options.Today();
        var command = new Command("audit", "Checks a practice, and finished sites, and says everything it finds.") { folder, site, clients, format, strict, today };
        command.SetAction(asked => Run(
            asked.GetRequiredValue(folder), asked.GetValue(site), asked.GetValue(clients) ?? [], asked.GetValue(format) == "json", asked.GetValue(strict),
            asked.GetValue(today) ?? Calendar.Today()));
        return command;
    }

    private static int Run(string folder, string? sites, string[] clients, bool asJson, bool strict, DateOnly today)
    {
        var desk = Desk.Open(folder, clients, today);
        if (sites is not null && !Directory.Exists(sites)) throw new DirectoryNotFoundException($"There is no folder '{sites}'.");
        var theme = ThemeFolder.Plain();
        foreach (var (index, id) in desk.Wanted.Index())
        {
            Progress.Show($"{index + 1} of {desk.Wanted.Count}: {id}");
            if (desk.Ready(id) is not { } client || desk.Practice is not { } practice) continue;
            var plan = Plan.For(practice, client);
            var site = sites is null ? SiteRenderer.Render(plan, theme, desk.Findings) : PublishedSite.Read(Path.Combine(sites, id.Text), id);
            if (site is not null) desk.Audit(plan, site);
        }

        Progress.Clear();
        var findings = desk.Said();
        if (asJson) Console.Out.WriteLine(FindingJson.Write(findings));
        else FindingText.Write(Console.Out, findings, new Excerpts(desk.Folder, sites));
        return findings.Any(f => f.Level == Level.Error || (strict && f.Level == Level.Warning)) ? Commands.ErrorsFound : Commands.Fine;
    }
}
