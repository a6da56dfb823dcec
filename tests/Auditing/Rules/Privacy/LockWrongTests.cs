using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>What is wrong with the policy of a page that asks for a passphrase: LockWrong.md.</summary>
public sealed class LockWrongTests
{
    private static readonly Lazy<(Plan Plan, Site Site)> Locked = new(() =>
    {
        var findings = new Findings();
        var practice = PracticeReader
            .Read(
                SourceFolder.Of(LittlePractice.Files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))),
                findings
            )
            .Practice;
        Assert.NotNull(practice);
        var plan = Planned.For(practice, practice.Clients[0]);
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings, Rendition.Locked);
        Assert.NotNull(site);
        Assert.Empty(findings);
        return (plan, site);
    });

    [Fact]
    public void As_it_is_written_nothing_is_wrong() => Assert.Empty(Found("default-src", "default-src"));

    /// <summary>It is one file: of its own folder it has nothing to ask for.</summary>
    [Theory]
    [InlineData("default-src 'none'", "default-src 'none'; media-src 'self'", "lets 'self' into media-src.")]
    [InlineData("default-src 'none'", "default-src 'none'; media-src https:", "lets https: into media-src.")]
    [InlineData("base-uri 'none'", "x", "has no base-uri.")]
    [InlineData(
        "http-equiv=\"Content-Security-Policy\"",
        "name=\"policy\"",
        "The page that asks for the passphrase has no policy that keeps the network out."
    )]
    public void What_lets_something_in_is_told(string said, string instead, string end) =>
        Assert.Contains(Found(said, instead), message => message.EndsWith(end, StringComparison.Ordinal));

    private static string[] Found(string said, string instead)
    {
        var (plan, site) = Locked.Value;
        var pages = site.Pages.Select(p => p.Path == PagePath.Lock ? new Page(p.Path, Replaced(p.Html, said, instead)) : p);
        return
        [
            .. RuleBook
                .Audit(plan, new Site(site.Client, pages, site.Assets), [])
                .Where(f => f.Rule.Text == "lock-wrong")
                .Select(f => f.Message),
        ];
    }

    private static string Replaced(string html, string said, string instead)
    {
        Assert.Contains(said, html, StringComparison.Ordinal);
        return html.Replace(said, instead, StringComparison.Ordinal);
    }
}
