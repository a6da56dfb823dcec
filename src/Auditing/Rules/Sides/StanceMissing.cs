using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class StanceMissing : ISiteRule
{
    private const string Help =
        "Show the sentences of the stance on page one as they are, one after another, before any link to a session or an "
        + "exercise.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        if (site.Page(PagePath.Home) is not { } page)
            yield break;
        var texts = TextsOf(plan).Select(Spacing.Collapse).ToArray();
        if (EndOf(page.Shown, string.Join(' ', texts)) is { } end)
        {
            if (FirstToTraining(plan, page) is { } link && link.At < page.Shown[end].At)
                yield return Said(plan, link.At, "This link leads to training before the page has said which side is which.");
        }
        else if (texts.FirstOrDefault(text => !page.Shown.Any(l => WholeWords.Places(l.Text, text).Any())) is { } missing)
        {
            yield return Said(plan, page.At, $"The sentence \"{missing}\" is not on this page, or it is other.");
        }
        else
        {
            yield return Said(
                plan,
                page.At,
                "The sentences that say which side is which do not stand together, in their order, without other words "
                    + "between them."
            );
        }
    }

    /// <summary>With several sports each one's name before its sentences.</summary>
    private static IEnumerable<string> TextsOf(Plan plan) =>
        plan
            .Stances.SelectMany(s => plan.Stances.Count > 1 ? s.Sentences.Prepend(s.Sport) : s.Sentences)
            .Append(plan.Words.Say("stance-check"));

    /// <summary>The last of some lines in a row that together say the text and nothing else.</summary>
    private static int? EndOf(Series<TextLine> lines, string text)
    {
        for (var first = 0; first < lines.Count; first++)
        {
            var said = lines[first].Text;
            for (var last = first; text.StartsWith(said, StringComparison.Ordinal); said += " " + lines[last].Text)
            {
                if (said == text)
                    return last;
                if (++last == lines.Count)
                    break;
            }
        }

        return null;
    }

    private static LinkSeen? FirstToTraining(Plan plan, PageSeen page)
    {
        // As pages they are files, all in one they are places named as the files are.
        var training = plan
            .Sessions.Select(s => s.Path)
            .Concat(plan.Exercises.Select(e => e.Path))
            .SelectMany(path => new[] { path, Path.GetFileNameWithoutExtension(path) })
            .ToHashSet(StringComparer.Ordinal);
        return page.Links.Where(l => training.Contains(l.Address.TrimStart('#').Split('#')[0])).MinBy(l => l.At);
    }

    private Finding Said(Plan plan, Location at, string message) => this.Found(Level.Error, plan.Client, at, message, Help);
}
