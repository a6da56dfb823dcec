using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Tests.Planning;

/// <summary>What a command makes of a practice before it renders: trainings and plans.</summary>
internal static class Planned
{
    public static Plan For(Practice practice, Client client)
    {
        var training = Training.Of(practice, client);
        return Plan.For(training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, training));
    }

    public static IReadOnlyDictionary<ClientId, Training> Trainings(Practice practice) =>
        practice.Clients.ToDictionary(c => c.Id, c => Training.Of(practice, c));

    /// <summary>The uses of the one client of a practice, or of the one that is named.</summary>
    public static Series<Use> Uses(Practice practice, Client? client = null) =>
        Training.Of(practice, client ?? practice.Clients.Single()).Uses;
}
