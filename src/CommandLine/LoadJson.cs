using System.Text.Json.Nodes;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The load of clients for other programs: <c>{"clients": [{"client", "weeks": [{"motion", "side", "week", …}]}]}</c>;
/// side is left, right or null.</summary>
internal static class LoadJson
{
    public static string Write(IEnumerable<Training> trainings) =>
        JsonText.Of(
            new JsonObject
            {
                ["clients"] = JsonText.ListOf(trainings, training => new JsonObject
                {
                    ["client"] = training.Client.Text,
                    ["weeks"] = JsonText.ListOf(training.Loads, l => new JsonObject
                    {
                        ["motion"] = l.Motion.Name,
                        ["side"] = l.Side?.Word(),
                        ["week"] = l.Week,
                        ["stretchSeconds"] = l.Work.StretchSeconds.Value,
                        ["contractionSeconds"] = l.Work.ContractionSeconds.Value,
                        ["effortSeconds"] = l.Work.EffortSeconds,
                        ["reps"] = l.Work.Reps,
                        ["sessions"] = l.Sessions,
                        ["days"] = l.Days,
                        ["beforePlay"] = l.BeforePlay,
                        ["lighter"] = l.IsLighter,
                    }),
                }),
            }
        );
}
