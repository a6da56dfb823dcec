using System.CommandLine;
using System.Text;
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
        var part = Options.Part();
        var theme = Options.Theme();
        var passphrase = Options.Passphrase(
            "Locked sites: known, by their bytes alone; or ask for the passphrase of each, and look into it.",
            "known",
            "ask"
        );
        var format = Options.Choice(
            "--format",
            "For people (text, or html: one private page) or for other programs (json, sarif).",
            "text",
            "json",
            "sarif",
            "html"
        );
        var strict = new Option<bool>("--strict") { Description = "Count warnings as errors." };
        var today = Options.Today();
        var command = new Command("audit", "Checks a practice, and finished sites, and says everything it finds.")
        {
            folder,
            site,
            clients,
            part,
            theme,
            passphrase,
            format,
            strict,
            today,
        };
        command.SetAction(asked =>
            Run(
                forms.With(AskPassphrase.FormOf(asked.GetRequiredValue(passphrase))),
                asked.GetRequiredValue(folder),
                asked.GetValue(site),
                asked.GetValue(clients) ?? [],
                asked.GetValue(part),
                asked.GetValue(theme),
                asked.GetRequiredValue(format),
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
        Share? part,
        string? themeFolder,
        string format,
        bool strict,
        DateOnly today
    )
    {
        var read = CheckedPractice.Open(folder, clients, today, part);
        var linking = new Linking(null, rotate: false);
        linking.Settle(read.Practice?.Clients ?? [], []);
        forms = new([.. forms.InOrder, linking.Form]);
        if (sites is not null && !Directory.Exists(sites))
            throw new DirectoryNotFoundException($"There is no folder '{sites}'.");
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        if (themeFolder is not null)
            read.Judge(theme);
        var making = new SiteMaking(read, theme, [forms.Usual], sites ?? "", new(sites ?? ""));
        var ready = read.Wanted.Where(id => read.StoppedOn(id) is null).Select(read.Ready).OfType<Client>().ToArray();
        var judged = new HashSet<ClientId>();
        var found = AtOnce.InOrder(ready, client =>
            (client.Id, Sites: sites is null ? [making.New(client)] : making.Judge(client, Published(forms, sites, client.Id)))
        );
        foreach (var (index, (id, made)) in found.Index())
        {
            Progress.Show($"{index + 1} of {ready.Length}: {id}");
            if (read.Ready(id) is null)
                continue;
            judged.Add(id);
            foreach (var site in made)
                read.Add(id, site);
        }

        Progress.Clear();
        var findings = read.Said();
        var unjudged = sites is null
            ? []
            : read
                .Wanted.Where(id => !judged.Contains(id))
                .SelectMany(id => forms.Standing(id, sites).Select(site => new Unjudged(id, site.Place, read.StoppedOn(id))))
                .ToSeries();
        Say(format, read, findings, new Excerpts(read.Folder, read.Lines, sites), unjudged);
        if (format == "text" && sites is null && string.Join(", ", read.Changed(today)) is { Length: > 0 } changed)
            Console.Out.WriteLine($"Publishing makes a new edition for: {changed}.");
        return findings.Any(f => f.Level == Level.Error || (strict && f.Level == Level.Warning))
            ? Commands.ErrorsFound
            : Commands.Fine;
    }

    private static void Say(
        string format,
        CheckedPractice read,
        Series<Finding> findings,
        Excerpts excerpts,
        Series<Unjudged> unjudged
    )
    {
        switch (format)
        {
            case "json":
                Console.Out.WriteLine(FindingJson.Write(findings));
                break;
            case "sarif":
                WriteFile(
                    FindingSarif.Write(
                        findings,
                        Explanations.All(),
                        read.Folder,
                        [.. unjudged.Where(u => u.Stopped is null).Select(u => u.Client).Distinct()]
                    ) + "\n"
                );
                break;
            case "html":
                WriteFile(
                    FindingHtml.Write(
                        read.ForPeople(findings),
                        excerpts,
                        Explanations.All(),
                        id => read.Bound(id)?.Name,
                        unjudged
                    )
                );
                break;
            default:
                FindingText.Write(Console.Out, read.ForPeople(findings), excerpts);
                foreach (var site in unjudged)
                    Console.Out.WriteLine(site.Said);
                break;
        }
    }

    /// <summary>A file says what its letters are, whatever the terminal's are.</summary>
    private static void WriteFile(string text)
    {
        using var output = Console.OpenStandardOutput();
        output.Write(Encoding.UTF8.GetBytes(text));
    }

    /// <summary>Every form in which the client's site stands there; one at least.</summary>
    private static Series<StandingSite> Published(Forms forms, string sites, ClientId client)
    {
        var standing = forms.Standing(client, sites);
        return standing.Count == 0 ? [StandingSite.At(forms.Usual, client, sites)] : standing;
    }
}
