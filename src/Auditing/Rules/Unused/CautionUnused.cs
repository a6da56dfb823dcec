using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class CautionUnused : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var named = practice.Exercises.SelectMany(e => e.Signs).Select(s => s.Value).ToHashSet();
        return from caution in practice.Cautions
            where
                !named.Contains(caution.Id)
                && !practice.Exercises.Any(e => caution.AttachesTo?.Reaches(e, practice.Clients) ?? false)
            select this.Found(
                Level.Note,
                null,
                caution.At,
                $"No exercise names the caution '{caution.Title}', and "
                    + $"{(caution.AttachesTo is null ? "it attaches to nothing" : "none fits its 'attaches-to'")}.",
                "Name it under 'signs' where it belongs, say in 'attaches-to' where it is added, or take its file away."
            );
    }
}
