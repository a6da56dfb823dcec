using System.Reflection;
using System.Text;
using System.Text.Json;
using Gradus.Domain;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>One page in a browser, and what is seen of the lines of its plan.</summary>
internal sealed class PageWatch
{
    private const int High = 1400;

    private static readonly string Script = BuiltIn.Text(Assembly.GetExecutingAssembly(), "seen.js");

    private readonly IPage page;
    private readonly ICDPSession session;
    private readonly string[][] watched;
    private readonly string client;
    private readonly string name;

    private PageWatch(IPage page, ICDPSession session, string[][] watched, string client, string name) =>
        (this.page, this.session, this.watched, this.client, this.name) = (page, session, watched, client, name);

    private readonly Dictionary<(int Width, double Text, bool OnPaper, int From), List<Shown>> seen = [];

    /// <summary>A part of the window in one look, and how its words are painted there.</summary>
    private sealed record Shown(string Shot, (string? What, double Contrast)[] Contrasts);

    private sealed record Line(
        int Group,
        string Text,
        bool Found,
        bool Shown,
        string Reading,
        double Left,
        double Top,
        double Right,
        double Bottom
    );

    /// <param name="From">The number of its first word.</param>
    /// <param name="Scrolled">How far, in CSS pixels.</param>
    private sealed record Part(int From, int Next, double Scrolled, Painted[] Words);

    /// <param name="path">Of the file.</param>
    public static async Task<PageWatch> Open(IPage page, string path, Series<Series<string>> watched, string client)
    {
        await page.GotoAsync("file://" + path);
        await page.EvaluateAsync(Script + "; window.gradusSeen = gradusSeen; gradusSeen.still();");
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Accessibility.enable");
        return new(page, session, [.. watched.Select(g => g.ToArray())], client, Path.GetFileName(path));
    }

    /// <summary>Everything that is not seen as it should be in that sight.</summary>
    public async Task<Series<Fault>> Look(Sight sight)
    {
        await Show(sight);
        var lines = await Ask<Line[]>("groups => gradusSeen.find(groups)", watched);
        var faults = new List<Fault>();
        foreach (var line in lines.Where(l => !l.Found))
            Add(line.Text, "it does not stand there, or not in its place.");
        foreach (var number in await Ask<int[]>("() => gradusSeen.gone()"))
            Add(lines[number].Text, "it is not shown.");
        foreach (var (line, what) in OutOfOrder(lines))
            Add(line, what);
        if (sight.Look == ThemeCheck.Look.Light && !sight.OnPaper)
            foreach (var line in await Unread())
                Add(line, "a screen reader does not read it, or not in its place.");
        if (await Ask<int>("() => gradusSeen.wide()") is > 0 and var wide && !sight.OnPaper)
            Add("", FormattableString.Invariant($"the page is {wide} px wider than the window."));

        var best = new double[lines.Length];
        foreach (var (word, (pale, ratio)) in await Words(sight))
        {
            best[word.Line] = Math.Max(best[word.Line], ratio);
            if ((word.Misplaced(sight.SmallestLetters, sight.Width) ?? pale) is { } what)
                Add(lines[word.Line].Text, what);
        }

        foreach (var (number, ratio) in best.Index().Where(b => b.Item > 0))
            if (Painted.PaleLine(ratio) is { } what)
                Add(lines[number].Text, what);
        return faults.DistinctBy(f => (f.Line, f.What[..Math.Min(20, f.What.Length)])).ToSeries();

        void Add(string line, string what) => faults.Add(new(client, name, sight, line, what));
    }

    public async Task Show(Sight sight)
    {
        await page.SetViewportSizeAsync(sight.Width, High);
        await page.EmulateMediaAsync(
            new()
            {
                Media = sight.OnPaper ? Microsoft.Playwright.Media.Print : Microsoft.Playwright.Media.Screen,
                ColorScheme = sight.Look.Scheme,
                Contrast = sight.Look.Contrast,
                ForcedColors = sight.Look.Forced,
                ReducedMotion = sight.Look.Motion,
            }
        );
        await page.EvaluateAsync("([paper, size]) => { gradusSeen.paper(paper); gradusSeen.text(size); }", Args(sight));
    }

    private static object[] Args(Sight sight) => [sight.OnPaper, sight.Text];

    /// <summary>A line stands below the one before it, or beside it where reading goes on.</summary>
    private static IEnumerable<(string Line, string What)> OutOfOrder(Line[] lines)
    {
        foreach (var (before, line) in lines.Zip(lines.Skip(1)).Where(p => p.First.Group == p.Second.Group))
        {
            if (!before.Shown || !line.Shown)
                continue;
            var beside = line.Reading == "rtl" ? line.Right < before.Left + 1 : line.Left > before.Right - 1;
            var column = line.Reading == "rtl" ? line.Right < before.Right - 40 : line.Left > before.Left + 40;
            if (line.Top >= before.Bottom - 3 || beside || (column && line.Top < before.Top - 40))
                continue;
            yield return (line.Text, $"it stands before '{before.Text}', behind which it is read.");
        }
    }

    /// <summary>The lines that the accessibility tree does not have, or not behind those before them.</summary>
    private async Task<List<string>> Unread()
    {
        var tree = await session.SendAsync("Accessibility.getFullAXTree");
        var nodes = (tree ?? throw new InvalidOperationException("Chromium has no accessibility tree."))
            .GetProperty("nodes")
            .EnumerateArray()
            .DistinctBy(n => n.GetProperty("nodeId").GetString())
            .ToDictionary(n => n.GetProperty("nodeId").GetString() ?? "", StringComparer.Ordinal);
        var heard = new StringBuilder();
        Hear(nodes.Values.First(n => !n.TryGetProperty("parentId", out _)));
        var said = heard.ToString();
        var missing = new List<string>();
        foreach (var group in watched)
        {
            var from = 0;
            foreach (var line in group)
            {
                var at = said.IndexOf(Bare(line), from, StringComparison.Ordinal);
                if (at < 0)
                    missing.Add(line);
                else
                    from = at + Bare(line).Length;
            }
        }

        return missing;

        void Hear(JsonElement node)
        {
            if (
                !node.GetProperty("ignored").GetBoolean()
                && node.TryGetProperty("role", out var role)
                && role.GetProperty("value").GetString() == "StaticText"
            )
                heard.Append(Bare(node.GetProperty("name").GetProperty("value").GetString() ?? ""));
            else if (node.TryGetProperty("childIds", out var children))
                foreach (var child in children.EnumerateArray())
                    if (nodes.TryGetValue(child.GetString() ?? "", out var below))
                        Hear(below);
        }
    }

    /// <summary>Without what a line may be broken at, and what may be left out where it is.</summary>
    internal static string Bare(string text) =>
        string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('\u00AD' or '-')));

    /// <summary>How each word is painted. What looks the same to the last bit as it did in another look is not taken apart
    /// again; of the rest a second picture is taken without the letters.</summary>
    private async Task<IEnumerable<(Painted Word, (string? What, double Contrast) Paint)>> Words(Sight sight)
    {
        var parts = new List<(Part Part, Shown Shown)>();
        for (var part = await Measured(0); part.Words.Length > 0; part = await Measured(part.Next))
        {
            var shot = await Shot(part);
            var known = seen.GetValueOrDefault((sight.Width, sight.Text, sight.OnPaper, part.From));
            parts.Add((part, known?.Find(s => s.Shot == shot && s.Contrasts.Length == part.Words.Length) ?? new(shot, [])));
        }

        if (parts.Any(p => p.Shown.Contrasts.Length == 0))
            await page.EvaluateAsync("() => gradusSeen.letters(false)");
        foreach (var (i, (part, shown)) in parts.Index().Where(p => p.Item.Shown.Contrasts.Length == 0).ToArray())
        {
            await page.EvaluateAsync("top => gradusSeen.scroll(top)", part.Scrolled);
            var (with, without) = (
                Pixels.Of(Convert.FromBase64String(shown.Shot)),
                Pixels.Of(Convert.FromBase64String(await Shot(part)))
            );
            var taken = shown with
            {
                Contrasts = [.. part.Words.Select(w => w.Pale(with, without, Left(part.Words), Top(part.Words)))],
            };
            parts[i] = (part, taken);
            var place = (sight.Width, sight.Text, sight.OnPaper, part.From);
            if (!seen.TryGetValue(place, out var others))
                seen[place] = others = [];
            others.Add(taken);
        }

        await page.EvaluateAsync("() => gradusSeen.letters(true)");
        return parts.SelectMany(p => p.Part.Words.Zip(p.Shown.Contrasts));
    }

    private Task<Part> Measured(int from) => Ask<Part>("from => gradusSeen.measure(from)", from);

    private static int Left(Painted[] words) => Math.Max(0, (int)words.Min(w => w.Left) - 2);

    private static int Top(Painted[] words) => Math.Max(0, (int)words.Min(w => w.Top) - 2);

    /// <summary>The part of the window where those words are, as PNG in base 64.</summary>
    private async Task<string> Shot(Part part)
    {
        var (top, left, words) = (Top(part.Words), Left(part.Words), part.Words);
        var shot = await session.SendAsync(
            "Page.captureScreenshot",
            new()
            {
                ["format"] = "png",
                ["optimizeForSpeed"] = true,
                ["clip"] = new Dictionary<string, object>
                {
                    ["x"] = left,
                    ["y"] = top + part.Scrolled,
                    ["width"] = Math.Clamp(words.Max(w => w.Right) + 2 - left, 1, page.ViewportSize?.Width ?? 1),
                    ["height"] = Math.Clamp(words.Max(w => w.Bottom) + 2 - top, 1, High - Math.Min(top, High - 1)),
                    ["scale"] = 1,
                },
            }
        );
        return (shot ?? throw new InvalidOperationException("Chromium shows nothing.")).GetProperty("data").GetString() ?? "";
    }

    private async Task<T> Ask<T>(string question, object? about = null) =>
        (
            await page.EvaluateAsync(question, about) ?? throw new InvalidOperationException("The page does not answer.")
        ).Deserialize<T>(JsonSerializerOptions.Web) ?? throw new InvalidOperationException("The page does not answer.");
}
