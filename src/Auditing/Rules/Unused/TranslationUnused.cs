using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class TranslationUnused : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var read = practice.Clients.Select(c => c.Language).ToHashSet(StringComparer.Ordinal);
        return from translation in practice.Translations
            let own = translation.Language == practice.Card.Language
            where own || (practice.Clients.Count > 0 && !read.Contains(translation.Language))
            select this.Found(
                Level.Note,
                null,
                translation.At,
                own
                    ? $"The practice is written in '{translation.Language}' already, so nobody gets this text."
                    : $"No client reads '{translation.Language}', so nobody gets this text.",
                own
                    ? "Take it away, or say under 'language' in practice.md which language the other files are written in."
                    : "Keep it if you will want it, or take its file away."
            );
    }
}
