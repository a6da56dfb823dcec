using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class GlossaryUnused : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        if (practice.Glossary.Count == 0)
            return [];
        var met = new HashSet<int>();
        var glossary = new Glossary(practice.Glossary);
        foreach (var text in TextsOf(practice))
            glossary.Mark(text, met);
        return practice
            .Glossary.Index()
            .Where(entry => !met.Contains(entry.Index + 1))
            .Select(entry =>
                this.Found(
                    Level.Note,
                    null,
                    entry.Item.At,
                    $"No text uses the word '{entry.Item.Word}', so nobody reads its explanation.",
                    "Write it as the texts do, or take it out. Words in headings, titles and links are not explained.",
                    Math.Max(1, entry.Item.Word.Length)
                )
            );
    }

    private static IEnumerable<Prose> TextsOf(Practice practice)
    {
        yield return practice.Card.Scope;
        foreach (var caution in practice.Cautions)
            yield return caution.Body;
        foreach (var text in practice.Exercises.SelectMany(e => e.Text.Instructions.Prepend(e.Text.Why)))
            yield return text;
        foreach (var client in practice.Clients.Where(c => c.Language == practice.Card.Language))
            yield return client.Programme.Letter;
    }
}
