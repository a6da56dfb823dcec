using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>No page of a finished site shows a brace: not in its text, nor in what a screen reader says of it, nor in the list
/// of steps that the guided session plays.</summary>
[Trait("Slow", "yes")]
public sealed class BracesOnPagesTests
{
    private static readonly string[] Said = ["alt", "title", "aria-label", "aria-description", "placeholder", "value", "content"];

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Nowhere_on_a_finished_site(string language)
    {
        var practice = Practice(language);
        var pages = 0;
        foreach (var client in practice.Clients)
        {
            foreach (var page in Pages(practice, client))
            {
                Assert.Equal([], Braces(page.Html).Select(b => $"{client.Id} {page.Path}: {b}"));
                pages++;
            }
        }

        Assert.True(pages > 50, $"{pages} pages");
    }

    [Fact]
    public void One_that_is_there_is_seen()
    {
        Assert.Equal(["a {b}", "{c}"], Braces("<p>a {b}</p><img alt='{c}'><style>p { color: red }</style><script>{}</script>"));
        var practice = Practice("en");
        var page = Pages(practice, practice.Clients[0]).First();
        Assert.NotEmpty(Braces(page.Html.Replace("<h1>", "<h1>{hold} ", StringComparison.Ordinal)));
    }

    private static IEnumerable<Page> Pages(Practice practice, Client client) =>
        (
            SiteRenderer.Render(Planned.For(practice, client), ThemeFolder.Plain(), [])
            ?? throw new InvalidOperationException("No site.")
        ).Pages;

    private static IEnumerable<string> Braces(string html)
    {
        var document = new HtmlParser().ParseDocument(html);
        var texts = document
            .Descendants<IText>()
            .Where(t => t.ParentElement is not { LocalName: "style" or "script" or "template" })
            .Select(t => t.Data.Trim());
        var said = document.All.SelectMany(e => Said.Select(e.GetAttribute)).OfType<string>();
        return texts.Concat(said).Where(t => t.AsSpan().ContainsAny('{', '}'));
    }

    private static Practice Practice(string language)
    {
        var files = Repository
            .Files("content", "")
            .Select(file =>
                KeyValuePair.Create(
                    Path.GetRelativePath(Repository.Path("content"), file).Replace('\\', '/'),
                    file.EndsWith("client.yaml", StringComparison.Ordinal)
                        ? Encoding.UTF8.GetBytes(
                            File.ReadAllText(file).Replace("language: en\n", $"language: {language}\n", StringComparison.Ordinal)
                        )
                        : File.ReadAllBytes(file)
                )
            );
        return PracticeReader.Read(SourceFolder.Of(files), []).Practice ?? throw new InvalidOperationException("No practice.");
    }
}
