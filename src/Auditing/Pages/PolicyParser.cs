using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a page lets itself load, and what stands in it that only a policy with its hash lets run.</summary>
/// <param name="at">Where an element is written.</param>
internal sealed class PolicyParser(Func<PageElement?, Location> at)
{
    public PolicyReading Read(PageMarkup page, Func<PageElement, string> textOf)
    {
        var policies = new List<PolicySeen>();
        var parts = new List<InlinePart>();
        var loaded = false;
        foreach (var element in page.All)
        {
            if (IsPolicy(element))
                policies.Add(
                    new(element.Value("content") ?? "", element.ParentElement?.LocalName == "head" && !loaded, at(element))
                );
            else if (
                element.LocalName == "style"
                || (element.LocalName == "script" && !element.Has("src") && element.Value("type") != "application/json")
            )
                parts.Add(new(element.LocalName, textOf(element), at(element)));
            loaded =
                loaded
                || element.LocalName is "script" or "style" or "link" or "base"
                || LoadParser.MayAsk(element) && !IsPolicy(element) && element.LocalName != "meta";
        }

        return new(policies.ToSeries(), parts.ToSeries());
    }

    private static bool IsPolicy(PageElement element) =>
        element.LocalName == "meta"
        && string.Equals(element.Value("http-equiv")?.Trim(), "content-security-policy", StringComparison.OrdinalIgnoreCase);
}

/// <param name="Policies">In the order in which they come.</param>
/// <param name="Inline">The scripts and styles that stand in the page.</param>
public sealed record PolicyReading(Series<PolicySeen> Policies, Series<InlinePart> Inline);

/// <param name="IsInTime">Whether it stands in the head, before anything that loads or runs: before that a browser does not know
/// of it.</param>
public sealed record PolicySeen(string Text, bool IsInTime, Location At);

/// <param name="Element">"script" or "style".</param>
public sealed record InlinePart(string Element, string Text, Location At);
