using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>The lines of finished pages that findings point at. A page may never have been written, and a file of the same name
/// in a theme is another.</summary>
internal sealed class PageLines
{
    private readonly Dictionary<(string Client, string File, int Line), string> lines = [];

    /// <summary>The lines of a site that findings point at, each once.</summary>
    public static Series<FoundLine> Of(Site site, Series<Finding> findings) =>
        (
            from at in findings.Select(f => f.At).Where(at => at.Line > 0).Distinct()
            let page = site.Pages.FirstOrDefault(p => p.Path == at.File)
            where page is not null
            select new FoundLine(at.File, at.Line, LineOf(page.Html, at.Line))
        )
            .Distinct()
            .ToSeries();

    public void Keep(ClientId client, Series<FoundLine> found)
    {
        foreach (var line in found)
            lines[(client.Text, line.File, line.Line)] = line.Text;
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
