using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ClipWithoutCaptions : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from exercise in training.Uses.Select(u => u.Exercise.Id).Distinct()
        from shown in ClipsOf(practice, exercise, client.Language)
        let clip = practice.Clips.First(c => c.Path == shown.Path)
        where clip.CaptionsIn(client.Language) is null
        let file = Path.GetFileName(Clip.CaptionsPath(clip.Path, client.Language))
        select this.Found(
            clip.Sounds ? Level.Error : Level.Warning,
            client.Id,
            shown.At,
            $"The clip '{clip.Path}' has no captions in the language that {client.Name} reads "
                + $"({client.Language}){(clip.Sounds ? ", and it has sound" : "")}.",
            clip.Sounds
                ? $"Write {file} beside it, with what is said and when."
                : $"Write {file} beside it: it can say what to watch for."
        );

    private static IEnumerable<Inline.Clip> ClipsOf(Practice practice, ExerciseId exercise, string language) =>
        (practice.In(language).Find(exercise)?.Text.Instructions ?? []).SelectMany(p => p.Inlines()).OfType<Inline.Clip>();
}
