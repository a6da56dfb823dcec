using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LanguageMissing : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            var (said, own) = (page.Shape.Language ?? "", plan.Words.Language);
            if (said.Length == 0)
                yield return Said(
                    plan,
                    page,
                    "This page does not say its language.",
                    $"Write <html lang=\"{own}\">, so that it is read out in the right one."
                );
            else if (!IsOf(said, own))
                yield return Said(
                    plan,
                    page,
                    $"This page says that its language is '{said}', but it is '{own}'.",
                    $"Write <html lang=\"{own}\">, so that it is read out in the right one."
                );
            var direction = page.Shape.Direction?.ToLowerInvariant() ?? "ltr";
            if (direction != plan.Words.Direction)
                yield return Said(
                    plan,
                    page,
                    $"This page is laid out '{direction}', but its language is read '{plan.Words.Direction}'.",
                    $"Write dir=\"{plan.Words.Direction}\" on the element 'html'; without it a page is laid out from "
                        + "left to right."
                );
            if (page.Shape.Title.Length == 0)
                yield return Said(
                    plan,
                    page,
                    "This page has no title.",
                    "Write in its head what it is about: it is the first that is read out."
                );
        }
    }

    /// <summary>The language itself, or one of its regions, as en-GB is of en.</summary>
    private static bool IsOf(string said, string own) =>
        string.Equals(said, own, StringComparison.OrdinalIgnoreCase)
        || said.StartsWith(own + "-", StringComparison.OrdinalIgnoreCase);

    private Finding Said(Plan plan, PageSeen page, string message, string help) =>
        this.Found(Level.Error, plan.Client, page.At, message, help);
}
