using Gradus.Domain;

namespace Gradus.Tests.Auditing.Pages.Styles;

/// <summary>Styles that harm a caution, and changes that harm nobody, behind the plain theme's own style. What harms
/// must be found, what does not must not.</summary>
public sealed class StyleBreaksTests(ITestOutputHelper output)
{
    private static readonly string Look = StyleTable.Plain("look.css");

    private static readonly int OfLook = StyleTable.Wrongs([Look]).Count;

    public static TheoryData<string, string> Kinds
    {
        get
        {
            var kinds = new TheoryData<string, string>();
            foreach (var table in (string[])["breaks.txt", "former-faults.txt"])
            foreach (var kind in StyleTable.Read(table).Select(r => r.Kind).Distinct())
                kinds.Add(table, kind);
            return kinds;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_style_that_harms_is_found(string table, string kind)
    {
        var rows = StyleTable.Read(table).Where(r => r.Kind == kind).ToArray();
        var missed = rows.Where(r => StyleTable.Wrongs([Look + "\n" + r.Line]).Count <= OfLook).ToArray();
        output.WriteLine($"{kind, -45}{rows.Length, 4} planted {missed.Length, 3} missed");
        Assert.Empty(missed.Select(r => r.Line));
    }

    [Theory]
    [InlineData("breaks.txt", 480, 12)]
    [InlineData("former-faults.txt", 160, 3)]
    public void Many_styles_of_many_kinds_harm(string table, int least, int kinds)
    {
        var rows = StyleTable.Read(table);
        Assert.True(rows.Count >= least, $"{rows.Count} breaks");
        Assert.True(rows.Select(r => r.Kind).Distinct().Count() >= kinds);
        Assert.Equal(rows.Count, rows.Select(r => r.Line).Distinct().Count());
    }

    [Fact]
    public void A_change_that_harms_nobody_has_nothing_to_find()
    {
        var rows = StyleTable.Read("harmless.txt");
        var found = new List<string>();
        foreach (var kind in rows.GroupBy(r => r.Kind))
        {
            var wrong = kind.Select(r => (r.Line, Found: StyleTable.Wrongs(Changed(r.Line))))
                .Where(r => r.Found.Count > 0)
                .ToArray();
            output.WriteLine($"{kind.Key, -45}{kind.Count(), 4} changes {wrong.Length, 3} found");
            found.AddRange(wrong.Select(w => $"{w.Line}: {string.Join(' ', w.Found)}"));
        }

        Assert.Empty(found);
        Assert.True(rows.Count >= 150, $"{rows.Count} changes");
    }

    [Fact]
    public void The_plain_theme_has_nothing_to_find() =>
        Assert.Empty(StyleTable.Wrongs(StyleTable.Files.Select(StyleTable.Plain)));

    /// <summary>What a sheet must say, one thing after another taken out.</summary>
    [Theory]
    [InlineData("[hidden], dialog:not([open]) { display: none !important; }", "[hidden] { display: none")]
    [InlineData("* { box-sizing: border-box; }", "* { box-sizing: border-box")]
    [InlineData("background: var(--ground);\n  color: var(--ink);\n  font-family", "body { background: <ground>")]
    [InlineData("button, input, select, textarea, summary { min-block-size: 44px; }", "button { min-block-size")]
    [InlineData("button, input, select, textarea, dialog { background: var(--ground); color: var(--ink); }", "dialog { color")]
    [InlineData(
        "button *, a.start *, .kind > h3 * { background: none !important; color: inherit !important; }",
        ".kind > h3 * { color"
    )]
    [InlineData(".now > :first-child { padding-inline-end: min(4.5rem, 15vw) !important; }", ".now > :first-child")]
    [InlineData("padding-block: 0.3rem; }", "a { padding-block: <link>")]
    public void What_a_site_must_say_is_missed(string said, string missing)
    {
        Assert.Contains(said, Look, StringComparison.Ordinal);
        var without =
            said.Contains("font-family", StringComparison.Ordinal) ? "font-family"
            : said.StartsWith("padding", StringComparison.Ordinal) ? "}"
            : "";
        var found = StyleTable.Wrongs([Look.Replace(said, without, StringComparison.Ordinal)]);
        Assert.Contains(found, f =>
            f.Contains("missing: ", StringComparison.Ordinal) && f.Contains(missing, StringComparison.Ordinal)
        );
    }

    private static Series<string> Changed(string line)
    {
        if (line.StartsWith("+ ", StringComparison.Ordinal))
            return [Look + "\n" + line[2..], StyleTable.Plain("guide.css"), StyleTable.Plain("print.css")];
        var (file, change) = (line.Split(" | ", 2)[0], line.Split(" | ", 2)[1].Split(" => "));
        return StyleTable
            .Files.Select(f => f == file ? Replaced(StyleTable.Plain(f), change[0], change[1]) : StyleTable.Plain(f))
            .ToSeries();
    }

    private static string Replaced(string text, string said, string instead)
    {
        Assert.Contains(said, text, StringComparison.Ordinal);
        return text.Replace(said, instead, StringComparison.Ordinal);
    }
}
