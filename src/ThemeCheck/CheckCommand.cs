using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>A theme's folder → what is not seen with it, or <c>checked.txt</c>. Exit status: 0 everything is seen, 1 something is
/// not, 2 it could not be looked at.</summary>
internal static class CheckCommand
{
    private const int Fine = 0,
        Faulty = 1,
        NotCarriedOut = 2;

    private const int Most = 60;

    public static async Task<int> RunAsync(string[] args)
    {
        var folder = new Argument<string>("DIR") { Description = "The theme's folder." };
        var today = new Option<string?>("--today")
        {
            Description = "The day to write into checked.txt; without it there is none.",
            HelpName = "YYYY-MM-DD",
        };
        var root = new RootCommand("Looks in Chromium whether every caution is seen with a theme, and writes checked.txt.")
        {
            folder,
            today,
        };
        root.SetAction((asked, _) => Run(asked.GetRequiredValue(folder), asked.GetValue(today)));
        try
        {
            return await root.Parse(args).InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or PlaywrightException)
        {
            Console.Error.WriteLine(trouble.Message);
            return NotCarriedOut;
        }
    }

    private static async Task<int> Run(string folder, string? today)
    {
        DateOnly? day =
            today is null ? null
            : DateOnly.TryParseExact(today, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var named)
                ? named
            : throw new IOException($"'{today}' is no day. Write year, month and day with hyphens, as 2026-12-07.");
        var theme = ThemeFolder.Open(folder);
        var clock = Stopwatch.StartNew();
        var file = Path.Combine(folder, CheckedTheme.Path);
        var faults = await FaultsOf(theme, ThemeWatch.Whole);
        foreach (var line in faults.Take(Most))
            Console.Out.WriteLine(line);
        if (faults.Count > 0)
        {
            Console.Out.WriteLine(FormattableString.Invariant($"{faults.Count} faults; {CheckedTheme.Path} is not written."));
            return Faulty;
        }

        var version = Assembly.GetExecutingAssembly().GetName().Version?.ToString(3) ?? "";
        await File.WriteAllTextAsync(file, new CheckedTheme(theme.Seen.Digest, version, day).Text());
        Console.Out.WriteLine(
            FormattableString.Invariant($"Every caution is seen; {file} is written. It took {clock.Elapsed.TotalSeconds:0} s.")
        );
        return Fine;
    }

    /// <summary>What the rules find on the pages, and where they find nothing, what is not seen in the browser.</summary>
    internal static async Task<Series<string>> FaultsOf(Theme theme, Func<Plan, string, Series<Sight>> chosen)
    {
        var plans = TorturePractice.Plans();
        var findings = new Findings();
        var sites = new List<(Plan Plan, Site Site)>();
        foreach (var plan in plans)
            if (TorturePractice.Site(plan, theme, findings) is { } site)
            {
                sites.Add((plan, site));
                findings.AddRange(RuleBook.Audit(plan, site, []));
            }

        var wrong = findings.InOrder().Where(f => f.Level == Level.Error).ToArray();
        if (wrong.Length > 0)
            return wrong.Select(f => $"{f.Client}/{f.At}: {f.Rule}: {f.Message} {f.Help}").ToSeries();
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.Launch(playwright);
        return Fault.Said(await ThemeWatch.Of(browser, sites, chosen)).ToSeries();
    }
}
