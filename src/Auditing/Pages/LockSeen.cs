using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The page around a locked one, as the rules see it.</summary>
/// <param name="Html">The whole of it, with nothing locked in it.</param>
/// <param name="Inside">The page that is locked.</param>
/// <param name="Policies">Those of the page around it.</param>
public sealed record LockSeen(string Html, string Inside, Series<PolicySeen> Policies)
{
    internal static readonly Location At = Location.Whole(PagePath.Lock);

    internal static LockSeen Of(string html, string inside) =>
        new(
            html,
            inside,
            new PolicyParser(_ => At).Read(PageMarkup.Of(PageTree.Of(html)), element => element.TextContent).Policies
        );
}
