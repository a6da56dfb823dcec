using System.Text.Json;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The load of clients for other programs: <c>{"clients": [{"client", "weeks": [{"motion", "side", "week", …}]}]}</c>;
/// side is left, right or null.</summary>
internal static class LoadJson
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(IEnumerable<Training> trainings) =>
        JsonSerializer.Serialize(
            new
            {
                Clients = trainings.Select(training => new
                {
                    Client = training.Client.Text,
                    Weeks = training.Loads.Select(l => new
                    {
                        Motion = l.Motion.Name,
                        Side = l.Side?.Word(),
                        l.Week,
                        StretchSeconds = l.Work.StretchSeconds.Value,
                        ContractionSeconds = l.Work.ContractionSeconds.Value,
                        l.Work.EffortSeconds,
                        l.Work.Reps,
                        l.Sessions,
                        l.Days,
                        l.BeforePlay,
                        Lighter = l.IsLighter,
                    }),
                }),
            },
            Indented
        );
}
