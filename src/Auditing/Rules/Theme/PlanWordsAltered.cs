using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class PlanWordsAltered : IToldOnceRule, ISheetRule
{
    private const string Help = "Show what the plan says of every dose, week and session, in its order and in its own words.";

    /// <summary>The first text of each page that is not there, or not for everybody, and that no rule of its own looks
    /// for.</summary>
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            if (page.Spoken.Missing.FirstOrDefault(m => !m.Text.IsGuarded) is { } missing)
                yield return this.Wrong(
                    plan,
                    page.Spoken.Strange.FirstOrDefault(s => s.Behind == missing.Behind)?.Line.At ?? missing.Behind?.At ?? page.At,
                    $"The plan says \"{missing.Text.Texts[0]}\" here, and the page does not.",
                    Help
                );
            foreach (var (line, text) in page.Spoken.Planned)
                if (
                    page.Lines[line].HiddenBy is { } by
                    && text is { IsNeeded: true, IsGuarded: false, IsOnScreenAlone: false }
                    && PageMark.LeavesShown(text.Mark)
                    && !HiddenElements.IsToldElsewhere(by)
                )
                {
                    yield return this.Wrong(
                        plan,
                        page.Lines[line].At,
                        $"The plan says \"{text.Texts[0]}\" here, and {by} keeps it from somebody.",
                        Help
                    );
                    break;
                }
        }
    }

    /// <summary>Every question, once, in its order.</summary>
    public IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen)
    {
        var asked = sheet.Questions.Select(q => Spacing.Collapse(q.Question)).ToArray();
        if (asked.Where((question, at) => !Stands(at, question)).FirstOrDefault() is { } missing)
            yield return Said($"The intake sheet does not ask \"{missing}\" where everybody sees it, in its place.");
        else if (seen.Questions.Count > asked.Length)
            yield return Said($"The intake sheet asks \"{seen.Questions[asked.Length]}\", which nobody wrote.");

        bool Stands(int at, string question) =>
            at < seen.Questions.Count && seen.Questions[at].EndsWith(question, StringComparison.Ordinal);

        Finding Said(string message) =>
            this.Found(
                Level.Error,
                null,
                IntakeSheetSeen.Template,
                message,
                "Show each of 'sheet.questions' once, in this order, in a legend."
            );
    }
}
