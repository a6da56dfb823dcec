using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A new client's folder. What is true of a person (age, stance, consent, health) is left to be asked, and reading
/// refuses it until then; what the practice knows is filled in.</summary>
internal static class NewClient
{
    /// <exception cref="IOException">The practice has no sport, or no exercise that a programme could begin with.</exception>
    public static Series<StarterFile> Files(ClientId id, Practice practice, DateOnly today)
    {
        if (practice.Sports.Count == 0)
            throw new IOException(
                "This practice has no sport that can be read, and a client plays one. Write sports/ID.yaml first."
            );
        var sport = practice.Sports[0];
        var (exercise, dose) = First(practice);
        var conditions = Screening.Asked(practice);
        return StarterFiles.Under(
            "new/client",
            [
                ("title", NameOf(id)),
                ("sport", sport.Id.Text),
                ("question", sport.StanceQuestion),
                ("country", practice.Card.Emergency.Count > 0 ? practice.Card.Emergency[0].Country : "GB"),
                ("language", practice.Words.In(practice.Card.Language, "en").Language),
                ("zone", ZoneOf(practice)),
                ("equipment", exercise.Equipment.Count > 0 ? string.Join(", ", exercise.Equipment) : "mat"),
                ("answers", string.Join('\n', conditions.Select(c => $"  # {c.Question}\n  {c.Id}: not asked"))),
                ("condition", conditions.Count > 0 ? conditions[0].Id.Text : ""),
                .. StarterFiles.DaysAfter(today),
                ("exercise", exercise.Id.Text),
                ("sides", string.Join(", ", sport.Roles.Select(r => r.Name).Prepend("right").Prepend("left"))),
                ("low", Bare(dose.Low())),
                ("high", Bare(dose.High())),
            ]
        );
    }

    /// <summary>What can be begun with: done on each side, early in the order of training.</summary>
    private static (Exercise Exercise, Dose Dose) First(Practice practice)
    {
        foreach (
            var exercise in practice
                .Exercises.OrderByDescending(e => e.Trains.IsPaired)
                .ThenBy(e => e.Stage)
                .ThenBy(e => e.Id.Text, StringComparer.Ordinal)
        )
            if (exercise.Dose.Dose is { } dose && exercise.NotWith.Count > 0)
                return (exercise, dose);
        throw new IOException(
            "This practice has no exercise that a programme could begin with. Write one first: gradus new exercise ID."
        );
    }

    /// <summary>Where most clients of the practice live.</summary>
    private static string ZoneOf(Practice practice) =>
        practice.Clients.Select(c => c.Zone.Text).GroupBy(z => z, StringComparer.Ordinal).MaxBy(g => g.Count())?.Key
        ?? "Europe/London";

    /// <summary>"ada-wren" as "Ada Wren".</summary>
    private static string NameOf(ClientId id) =>
        string.Join(' ', id.Text.Split('-', StringSplitOptions.RemoveEmptyEntries).Select(StarterFiles.Title));

    /// <summary>The work alone: the terms come from the exercise.</summary>
    private static string Bare(Dose dose) => DosePrinter.Print(dose with { Terms = DoseTerms.None });
}
