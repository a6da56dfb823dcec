using System.Diagnostics;
using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.ThemeCheck;

namespace Gradus.Tests.Browser;

/// <summary>A theme's own check in a browser: the themes that pass it, and styles that do harm, which the lists of what a style
/// may say are not asked about here.</summary>
public sealed class ThemeCheckTests(PublishedContent content, ITestOutputHelper output)
{
    private const string Page = "session-2.html";

    private static readonly Plan Plan = TorturePractice.Plans().Single(p => p.Client.Text == "odo");

    private static readonly Sight[] Looked =
    [
        new(Look.Light, 320),
        new(Look.Dark, 768),
        new(Look.All.Single(l => l.Name == "forced colours"), 768),
        Sight.Print,
    ];

    /// <summary>What takes a caution from a reader, in which of the sights, and what is said of it.</summary>
    public static TheoryData<string, string, string> Harms =>
        new()
        {
            {
                ".foot { position: fixed; inset: 0; background: #fff; z-index: 9; }",
                "*",
                "it is covered by <footer class=\"foot\">."
            },
            { ".caution { background: linear-gradient(#2a3440, #1b2430) !important; }", "light, 320 px", "do not stand out" },
            {
                "@media screen and (max-width: 400px) { .kind { background-image: linear-gradient(#8b9099, #8b9099); } }",
                "light, 320 px",
                "to 1, and 4.5"
            },
            { ".caution { height: 1.2rem; overflow: hidden; }", "*", "it is c" },
            { ".signs { display: flex; flex-direction: column-reverse; }", "*", "it stands before '" },
            { ".cautions { display: grid; } .kind.stop { order: 9; }", "*", "it stands before '" },
            { ".caution p { font-size: 1px; }", "*", "its letters have 1 px, and need " },
            { "@media print { .caution p { display: none; } }", "print", "it is not shown." },
            { "@media print { .caution p { color: #ddd; } }", "print", "do not stand out" },
            { "@media (max-width: 400px) { .caution p { position: absolute; left: -999px; } }", "light, 320 px", "outside" },
            { "@media (max-width: 400px) { .caution p { white-space: nowrap; } }", "light, 320 px", "outside" },
            {
                "@media screen and (prefers-color-scheme: dark) { .caution p { color: #262b33; } }",
                "dark, 768 px",
                "do not stand out"
            },
            {
                "@media (forced-colors: active) { .caution p { forced-color-adjust: none; color: #000; background: #000; } }",
                "forced colours, 768 px",
                "not painted"
            },
            { ".caution p { opacity: 0.1; }", "*", "do not stand out" },
            { ".caution p { transform: scale(1, 0.1); }", "*", "pressed flat" },
            { ".caution p { transform: rotate(180deg); }", "*", "in another order" },
            { ".caution p { clip-path: inset(0 0 70% 0); }", "*", "it is c" },
            {
                ".kind { position: relative; } .kind::after { content: \"\"; position: absolute; inset: 0; background: #777; }",
                "light, 320 px",
                "cut off or covered by <section class=\"kind stop\">"
            },
            {
                "h4::after, p::after { content: \"\"; position: absolute; inset: 0; background: #777; pointer-events: none; }",
                "light, 320 px",
                "not painted"
            },
        };

    /// <summary>Every tenth of them, or all.</summary>
    public static TheoryData<string, string, string> Planted => [.. LongProof.Cases(Harms)];

    [Theory, MemberData(nameof(Planted))]
    public async Task A_caution_that_is_not_seen_is_found(string style, string sight, string said)
    {
        var sights = Looked.Where(s => sight == "*" || s.ToString() == sight).ToArray();
        var faults = await FaultsOf(style, LongProof.Whole ? Looked : [.. LongProof.First(1, sights)]);
        output.WriteLine(
            $"{faults.Count} faults, in {string.Join("; ", faults.Select(f => f.Sight.ToString()).Distinct())}: {style}"
        );
        foreach (var line in Fault.Said(faults).Take(4))
            output.WriteLine(line);
        Assert.Contains(faults, f => f.What.Contains(said, StringComparison.Ordinal) && f.Line.Length > 0 && f.Page == Page);
        Assert.All(faults, f => Assert.Contains(f.Sight, LongProof.Whole && !style.StartsWith('@') ? Looked : sights));
    }

    [Fact]
    public async Task The_page_as_it_is_has_no_fault() =>
        Assert.Empty(Fault.Said(await FaultsOf("", [.. LongProof.First(1, Looked)])));

    /// <summary>The theme that comes with Gradus, and one of another build altogether: no grid, no script, as on paper. A part of
    /// what <c>dotnet run --project src/ThemeCheck</c> looks at, or all of it, when it writes down what it saw.</summary>
    [Theory]
    [InlineData("themes/plain")]
    [InlineData("tests/Browser/second-theme")]
    [Trait("Alone", "yes")]
    public async Task A_theme_that_shows_every_caution_is_checked(string theme)
    {
        var clock = Stopwatch.StartNew();
        if (LongProof.Whole)
            await InAFolder(theme, async folder =>
            {
                Assert.Equal(0, await CheckCommand.RunAsync([folder, "--today", "2026-12-07"]));
                var seen = ThemeFolder.Open(folder).Seen;
                var written = await File.ReadAllTextAsync(Path.Combine(folder, CheckedTheme.Path));
                Assert.Equal(seen.Digest, CheckedTheme.DigestIn(written));
                Assert.EndsWith("\nday 2026-12-07\n", written, StringComparison.Ordinal);
            });
        else
            Assert.Empty(await CheckCommand.FaultsOf(ThemeFolder.Open(Repository.Path(theme.Split('/'))), ThemeWatch.Sample));
        output.WriteLine($"{theme}: {clock.Elapsed.TotalSeconds:0} s");
    }

    /// <summary>The rule about a theme that nobody checked: before, after, and when a file was changed since.</summary>
    [Theory]
    [InlineData("themes/plain", true)]
    [InlineData("tests/Browser/second-theme", false)]
    public Task What_was_checked_may_be_published_until_it_is_changed(string theme, bool known) => InAFolder(theme, folder =>
        {
            Assert.Equal(known, Seen().Checked == Seen().Digest);
            var file = Path.Combine(folder, CheckedTheme.Path);
            File.WriteAllText(file, new CheckedTheme(Seen().Digest, "0.1.0", null).Text());
            Assert.Empty(new ThemeUnchecked().Check(Seen()));
            Assert.DoesNotContain(ThemeFolder.Open(folder).Assets, a => a.Path == CheckedTheme.Path);
            File.AppendAllText(Directory.EnumerateFiles(folder, "*.css").First(), "\n");
            Assert.Single(new ThemeUnchecked().Check(Seen()));
            File.Delete(file);
            Assert.Single(new ThemeUnchecked().Check(Seen()));
            return Task.CompletedTask;

            ThemeSeen Seen() => ThemeFolder.Open(folder).Seen;
        });

    /// <summary>Each kind of page of the first client in every look, each look at each width, large letters and paper; axe on
    /// each, and on some in the dark.</summary>
    [Fact]
    public void Every_kind_of_page_is_looked_at_in_every_look()
    {
        string[] kinds = [PagePath.Home, PagePath.BeforeYouStart, Page, "exercise-lean.html", PagePath.Weeks];
        var looked = kinds.ToDictionary(kind => kind, kind => ThemeWatch.Whole(Plan, kind));
        foreach (var sights in looked.Values)
        {
            Assert.Equal(Look.All, Look.All.Where(look => sights.Any(s => s.Look == look)));
            Assert.Contains(sights, s => s.Text == 2);
            Assert.Contains(Sight.Print, sights);
            Assert.Single(sights, s => s.Axe);
        }

        var onScreen = looked.Values.SelectMany(s => s).Where(s => !s.OnPaper && s.Text == 1).Select(s => (s.Look, s.Width));
        Assert.Equal(Look.All.Count * Sight.Widths.Count, onScreen.Distinct().Count());
        Assert.NotEmpty(ThemeWatch.Whole(Plan, PagePath.AllPages));
        Assert.Equal(Look.All, Look.All.Where(look => ThemeWatch.Sample(Plan, Page).Any(s => s.Look == look)));
    }

    [Fact]
    public void Without_Chromium_it_is_said_how_to_get_it() =>
        Assert.Contains(
            "apt-get install chromium",
            Assert.Throws<IOException>(() => Chromium.Find(["/no/chromium", null])).Message,
            StringComparison.Ordinal
        );

    private static async Task InAFolder(string theme, Func<string, Task> what)
    {
        var folder = Directory.CreateTempSubdirectory("gradus-checked-").FullName;
        try
        {
            foreach (var file in Directory.EnumerateFiles(Repository.Path(theme.Split('/'))))
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            await what(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task<Series<Fault>> FaultsOf(string style, Sight[] sights)
    {
        var folder = Repository.Path("themes", "plain");
        var files = Directory
            .EnumerateFiles(folder)
            .Select(f => KeyValuePair.Create(Path.GetFileName(f), File.ReadAllBytes(f)))
            .Select(f =>
                f.Key == "print.css"
                    ? KeyValuePair.Create(f.Key, f.Value.Concat(Encoding.UTF8.GetBytes("\n" + style)).ToArray())
                    : f
            );
        var site = TorturePractice.Site(Plan, new Theme("harm", files), []);
        Assert.NotNull(site);
        return await ThemeWatch.Of(
            content.Browser,
            [(Plan, new Site(site.Client, site.Pages.Where(p => p.Path is Page or PagePath.Home), site.Assets))],
            (_, path) => path == Page ? sights.ToSeries() : []
        );
    }
}
