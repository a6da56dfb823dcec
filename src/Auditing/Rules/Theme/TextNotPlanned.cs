using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class TextNotPlanned : IToldOnceRule
{
    private const int Shown = 80;

    /// <summary>What stands in the place of a text that is missing is that text altered, which plan-words-altered says. Where
    /// a rule of its own looks for that text, it is said here too: that rule may look for something else.</summary>
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var (spoken, labels) = (site.Asked(plan).Spoken, site.Asked(plan).Labels);
        foreach (var page in site.Pages)
        {
            foreach (var heard in page.Shape.Words.Where(w => !IsPlanned(w, spoken, labels)).Take(1))
                yield return this.Wrong(
                    plan,
                    heard.At,
                    $"The plan does not have \"{Short(heard.Said)}\" as '{heard.Name}'.",
                    "Give it words of the plan or of the catalogue: people who hear the page get them in place of what "
                        + "stands there."
                );
            if (
                page.Shape.Title is { Length: > 0 } title
                && PageWording.Title(plan, page.Path) is { } titles
                && WordingReader.Read([new(title, page.At, null, "")], titles).Strange.Count > 0
            )
                yield return this.Wrong(
                    plan,
                    page.At,
                    $"The plan does not have \"{Short(title)}\" as the title of this page.",
                    "Give it the page's name, whose pages they are, the practice, or several of these."
                );
            var altered = page.Spoken.Missing.Where(m => !m.Text.IsGuarded).Select(m => m.Behind).ToHashSet();
            var added = page.Spoken.Strange.Where(s => !altered.Contains(s.Behind)).ToArray();
            if (added.Length == 0)
                continue;
            yield return this.Wrong(
                plan,
                added[0].Line.At,
                $"The plan does not have \"{Short(added[0].Line.Text)}\" here"
                    + (added.Length == 1 ? "." : ", nor other lines of this page."),
                "Show what the plan and the catalogue say of this page, part by part in their order, and nothing beside; what a "
                    + "coach wants to add belongs into the sources."
            );
        }
    }

    private static bool IsPlanned(
        WordsAttribute heard,
        IReadOnlyDictionary<string, string> spoken,
        IReadOnlySet<string> labels
    ) =>
        heard.Name.StartsWith("data-", StringComparison.Ordinal)
            ? heard.Said.Length == 0 || spoken.GetValueOrDefault(heard.Name, heard.Said) == heard.Said
            : labels.Contains(heard.Said);

    private static string Short(string text) => text.Length <= Shown ? text : text[..(Shown - 3)] + "...";
}
