using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>The lines of finished pages that findings point at. A page may never have been written, and a file of the same name
/// in a theme is another.</summary>
internal sealed class PageLines
{
    private readonly Dictionary<(string Client, string File, int Line), string> lines = [];

    public void Keep(Site site, Series<Finding> findings)
    {
        foreach (var at in findings.Select(f => f.At).Where(at => at.Line > 0).Distinct())
            if (site.Pages.FirstOrDefault(p => p.Path == at.File) is { } page)
                lines[(site.Client.Text, at.File, at.Line)] = LineOf(page.Html, at.Line);
    }

    /// <param name="line">From 1.</param>
    public string? Find(string? client, string file, int line) => lines.GetValueOrDefault((client ?? "", file, line));

    private static string LineOf(string html, int line)
    {
        var from = 0;
        for (; line > 1 && html.IndexOf('\n', from) is >= 0 and var end; line--)
            from = end + 1;
        var until = html.IndexOf('\n', from);
        return html[from..(until < 0 ? html.Length : until)];
    }
}
