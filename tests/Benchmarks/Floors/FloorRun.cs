using System.Text;
using AngleSharp.Html.Parser;
using Markdig;
using YamlDotNet.RepresentationModel;

namespace Gradus.Tests.Benchmarks;

/// <summary>The least that the libraries under each stage need for the same work, on one thread too.</summary>
internal static class FloorRun
{
    private static readonly HtmlParser Parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });

    /// <summary>The finished sites are read back from where they were published, so the floors see the same bytes.</summary>
    public static void Of(MadePractice made, IEnumerable<PublishedClient> clients, string published, string target, Laps laps)
    {
        var (bodies, yaml) = (made.Bodies(), made.Yaml());
        laps.Time(Stages.Reading, () => bodies.Sum(body => Markdown.ToHtml(body).Length) + yaml.Sum(Nodes));
        var form = new BareTemplate();
        foreach (var client in clients)
        {
            string[] paths = [.. Directory.GetFiles(Path.Combine(published, client.Id)).Order(StringComparer.Ordinal)];
            var files = laps.Time(Stages.WritingAgain, () => paths.Select(File.ReadAllBytes).ToArray());
            string[] pages =
            [
                .. files
                    .Zip(paths)
                    .Where(f => f.Second.EndsWith(".html", StringComparison.Ordinal))
                    .Select(f => Encoding.UTF8.GetString(f.First)),
            ];
            var views = pages.Select(form.Like).ToArray();
            var bare = laps.Time(Stages.Rendering, () => views.Sum(view => form.Fill(view).Length));
            SameSites.Expect(
                Math.Abs(bare - pages.Sum(p => p.Length)) < 0.03 * bare,
                "the bare pages are of other size than the finished ones"
            );
            laps.Time(Stages.Auditing, () => pages.Sum(page => Parser.ParseDocument(page).All.Length));
            laps.Time(Stages.Writing, () => Write(files, paths, Path.Combine(target, client.Id)));
        }
    }

    private static int Nodes(string yaml)
    {
        var stream = new YamlStream();
        using var text = new StringReader(yaml);
        stream.Load(text);
        return stream.Documents.Count;
    }

    private static int Write(byte[][] files, string[] paths, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var (bytes, path) in files.Zip(paths))
            File.WriteAllBytes(Path.Combine(folder, Path.GetFileName(path)), bytes);
        return files.Length;
    }
}
