using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TranslationMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.Language == practice.Card.Language)
            return [];
        var shown = training.Uses.Where(u => u.Weeks.Count > 0).DistinctBy(u => u.Exercise.Id).ToArray();
        return Cautions(practice, client, shown.Select(u => practice.Of(u.Exercise.Id)))
            .Concat(shown.SelectMany(use => Exercise(practice, client, use)));
    }

    private IEnumerable<Finding> Cautions(Practice practice, Client client, IEnumerable<Exercise> exercises) =>
        from id in exercises.SelectMany(e => practice.CautionsOf(e, client)).Distinct()
        let caution = practice.Find(id)
        where caution is not null && practice.Find(id, client.Language) is null
        select this.Found(
            Level.Error,
            client.Id,
            caution.At,
            $"The caution '{caution.Title}' has no text in '{client.Language}', the language of a client who needs it.",
            $"Write {Translation.PathOf(caution.At.File, client.Language)}: a title, and below the header what to do."
        );

    private IEnumerable<Finding> Exercise(Practice practice, Client client, Use use)
    {
        var exercise = practice.Of(use.Exercise.Id);
        if (practice.Find(exercise.Id, client.Language) is not { } translation)
        {
            yield return this.Found(
                Level.Warning,
                client.Id,
                use.At,
                $"'{exercise.Title}' has no text in '{client.Language}', so {client.Name} gets it in '{practice.Card.Language}'.",
                $"Write {Translation.PathOf(exercise.At.File, client.Language)}: a title, and below the header the text "
                    + "under the same headings.",
                use.Written.Exercise.Value.Text.Length
            );
            yield break;
        }

        foreach (
            var (key, original, translated) in new[]
            {
                ("start", exercise.Text.Start, translation.Text.Start),
                ("end", exercise.Text.End, translation.Text.End),
            }
        )
            if (original is not null && translated is null)
                yield return this.Found(
                    Level.Warning,
                    client.Id,
                    translation.At,
                    $"{exercise.At.File} says what its picture '{key}' shows, and this translation does not.",
                    $"Write {key}: {{ shows: … }} into its header; the picture itself is the same."
                );

        foreach (
            var (heading, original, translated) in new[]
            {
                ("## Set up", exercise.Text.SetUp, translation.Text.SetUp),
                ("## Do", exercise.Text.Do, translation.Text.Do),
            }
        )
        {
            if (!original.Lines().Any() || translated.Lines().Any())
                continue;
            yield return this.Found(
                Level.Warning,
                client.Id,
                translation.At,
                $"{exercise.At.File} has a text under '{heading}', and this translation has none.",
                "Keep the headings '## Set up' and '## Do' as they are, in every language; pages have their own words for them."
            );
        }
    }
}
