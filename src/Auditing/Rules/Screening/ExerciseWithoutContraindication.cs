using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ExerciseWithoutContraindication : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        practice.Exercises.Select(exercise => Said(practice, exercise)).OfType<Finding>();

    private Finding? Said(Practice practice, Exercise exercise)
    {
        if (exercise.NotWith.Count == 0)
            return this.Found(
                Level.Error,
                null,
                exercise.At,
                $"'{exercise.Title}' does not say who must leave it out.",
                "Add to its 'not-with' at least one condition."
            );
        // Where one of them could not be read, nobody knows what it is of.
        var named = exercise.NotWith.Select(mention => practice.Find(mention.Value)).OfType<Condition>().ToArray();
        if (named.Length < exercise.NotWith.Count || named.Any(c => !c.Where.IsSided || exercise.MayLoad(c.Where)))
            return null;
        return this.Found(
            Level.Warning,
            null,
            exercise.NotWith[0].At,
            $"'{exercise.Title}' is left out with {string.Join(" and ", named.Select(c => c.Name))} alone, and neither trains "
                + $"nor loads the {string.Join(" or the ", named.Select(c => c.Where.Name).Distinct())}.",
            "Ask who must leave out what it does train and load, and name that condition under 'not-with'; or say under 'loads' "
                + "what carries there.",
            exercise.NotWith[0].Value.Text.Length
        );
    }
}
