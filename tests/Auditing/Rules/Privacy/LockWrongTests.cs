using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>What is wrong with the policy of a page that asks for a passphrase: LockWrong.md.</summary>
public sealed class LockWrongTests
{
    private static readonly Site Locked = SiteRenderer.Render(FinishedSite.Plan, ThemeFolder.Plain(), [], Rendition.Locked)
        ?? throw new InvalidOperationException("It was not locked.");

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

    private static string[] Found(string said, string instead) =>
        [
            .. FinishedSite
                .Audit(FinishedSite.With(Locked, PagePath.Lock, said, instead))
                .Where(f => f.Rule.Text == "lock-wrong")
                .Select(f => f.Message),
        ];
}
