using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>Findings as one page for the coach alone: by client, then by rule, with the page of each rule behind them. It asks
/// for no other file and has no script.</summary>
internal sealed class FindingHtml
{
    private const string Whole = "practice";
    private static readonly string Style = BuiltIn.Text(typeof(FindingHtml).Assembly, "FindingHtml.css");

    private readonly StringBuilder html = new();
    private readonly Excerpts excerpts;
    private readonly Dictionary<RuleId, RulePage> pages;
    private readonly Func<ClientId, string?> nameOf;

    private FindingHtml(Excerpts excerpts, Series<RulePage> pages, Func<ClientId, string?> nameOf)
    {
        this.excerpts = excerpts;
        this.pages = pages.ToDictionary(p => p.Rule);
        this.nameOf = nameOf;
    }

    /// <param name="findings">In the order in which they are said.</param>
    /// <param name="pages">Those of every rule, in the order in which rules are listed.</param>
    /// <param name="nameOf">Null where a client's own file could not be read.</param>
    /// <param name="unjudged">Published sites that could not be judged, with the place of each.</param>
    public static string Write(
        Series<Finding> findings,
        Excerpts excerpts,
        Series<RulePage> pages,
        Func<ClientId, string?> nameOf,
        Series<Unjudged> unjudged
    )
    {
        var page = new FindingHtml(excerpts, pages, nameOf);
        page.Body(findings, unjudged);
        return CoachPage.Of("What the audit found", Style, page.html.ToString());
    }

    /// <summary>Findings alone, one after the other, each with the name of its rule.</summary>
    public static string Each(Series<Finding> findings, Excerpts excerpts)
    {
        var page = new FindingHtml(excerpts, [], _ => null);
        foreach (var finding in findings)
            page.One(finding, finding.Rule);
        return page.html.ToString();
    }

    private void Body(Series<Finding> findings, Series<Unjudged> unjudged)
    {
        html.Append($"<p class=\"counts\">{Counts(findings)}</p>\n");
        foreach (var site in unjudged)
            html.Append($"<p>{Escape(site.Said)}</p>\n");
        var parts = findings
            // What is said once for several stands with what is said of the whole practice: in no client's part alone.
            .GroupBy(f => f.Clients.Count > 0 ? null : f.Client?.Text ?? Reach.OwnerOf(f.At.File))
            .OrderBy(part => part.Key is not null)
            .ThenBy(part => part.Key, StringComparer.Ordinal)
            .ToArray();
        if (parts.Length > 1)
        {
            html.Append("<nav aria-label=\"Clients\">\n<ul>\n");
            foreach (var part in parts)
                html.Append($"<li><a href=\"#{AnchorOf(part.Key)}\">{Escape(TitleOf(part.Key))}</a>: {Counts(part)}</li>\n");
            html.Append("</ul>\n</nav>\n");
        }

        foreach (var part in parts)
            Part(part.Key, [.. part]);
        Pages(findings);
    }

    private void Part(string? client, Series<Finding> findings)
    {
        html.Append($"<section id=\"{AnchorOf(client)}\">\n<h2>{Escape(TitleOf(client))}</h2>\n")
            .Append($"<p class=\"counts\">{Counts(findings)}</p>\n");
        foreach (var rule in findings.GroupBy(f => f.Rule))
        {
            html.Append($"<h3><a href=\"#rule-{Escape(rule.Key.Text)}\">{Escape(rule.Key.Text)}</a>: {Counts(rule)}</h3>\n");
            if (pages.TryGetValue(rule.Key, out var page))
                html.Append($"<p class=\"summary\">{Escape(page.Summary)}</p>\n");
            foreach (var finding in rule)
                One(finding);
        }

        html.Append("</section>\n");
    }

    /// <param name="rule">Where it is not told already.</param>
    private void One(Finding finding, RuleId? rule = null)
    {
        var level = FindingText.Word(finding.Level);
        html.Append($"<div class=\"finding {level}\">\n")
            .Append($"<p><strong class=\"level\">{level}</strong> <span class=\"place\">{Escape(finding.At.ToString())}</span>")
            .Append($"{(rule is null ? "" : $" <span class=\"place\">{Escape(rule.Text)}</span>")}</p>\n")
            .Append($"<p>{Escape(finding.Sentence)}</p>\n");
        if (excerpts.Line(finding.Client?.Text, finding.At.File, finding.At.Line) is { } line)
        {
            var (shown, from, length) = FindingText.Cut(line, finding.At.Column, finding.Length);
            from = Math.Min(from, shown.Length);
            length = Math.Min(length, shown.Length - from);
            html.Append($"<pre>{Escape(shown[..from])}<mark>{Escape(shown.Substring(from, length))}</mark>")
                .Append($"{Escape(shown[(from + length)..])}</pre>\n");
        }

        html.Append($"<p>{Escape(finding.Help)}</p>\n</div>\n");
    }

    private void Pages(Series<Finding> findings)
    {
        var found = findings.Select(f => f.Rule).ToHashSet();
        if (found.Count == 0)
            return;
        html.Append("<section>\n<h2>The rules</h2>\n");
        foreach (var page in pages.Values.Where(p => found.Contains(p.Rule)))
            html.Append($"<div class=\"page\" id=\"rule-{Escape(page.Rule.Text)}\">\n{RulePageMarkup.Of(page, 3)}</div>\n");
        html.Append("</section>\n");
    }

    private string TitleOf(string? client) =>
        client is null ? "The whole practice"
        : nameOf(new(client)) is { } name ? $"{name} ({client})"
        : client;

    private static string AnchorOf(string? client) => client is null ? Whole : $"client-{Escape(client)}";

    private static string Counts(IEnumerable<Finding> findings) => Escape(FindingText.Counted([.. findings]));

    private static string Escape(string text) => CoachPage.Escape(text);
}
