using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>The pages of everything that can be found, from every room, in the order an author should meet them.</summary>
internal static class Explanations
{
    public static Series<RulePage> All() => [.. Faults.Pages(), .. RuleBook.Pages(), .. SiteRenderer.Pages()];
}
