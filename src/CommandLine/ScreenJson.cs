using System.Text.Json.Nodes;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The same for other programs: <c>{"clients": [{"client", "exercises": [{"exercise", "verdict", "reasons": [{"side",
/// "condition", "kind", "sentence", "answer", "at"}], "stops"}], "stops"}], "matrix": [{"exercise", "condition",
/// "bearing"}]}</c>; verdict is allowed, limited or forbidden, side left, right or null for every side, stops are sentences of
/// what stops it, or everything, today; answer and at are places (file:line:column), bearing is not-with, clear-first or
/// loads.</summary>
internal static class ScreenJson
{
    public static string Write(Practice practice, IEnumerable<(Client Client, ScreenedToday Screened)> clients) =>
        JsonText.Of(
            new JsonObject
            {
                ["clients"] = JsonText.ListOf(clients, c => Client(c.Client, c.Screened, practice)),
                ["matrix"] = JsonText.ListOf(
                    from exercise in practice.Exercises
                    from condition in Screening.Asked(practice)
                    let bearing = ConditionEffects.Of(exercise, condition)
                    where bearing != ConditionEffect.None
                    select new JsonObject
                    {
                        ["exercise"] = exercise.Id.Text,
                        ["condition"] = condition.Id.Text,
                        ["bearing"] = Kebab.Of(bearing.ToString()),
                    },
                    row => row
                ),
            }
        );

    private static JsonObject Client(Client client, ScreenedToday screened, Practice practice) =>
        new()
        {
            ["client"] = client.Id.Text,
            ["stops"] = JsonText.ListOf(screened.Everything.Select(f => f.Message)),
            ["exercises"] = JsonText.ListOf(screened.Exercises, a => new JsonObject
            {
                ["exercise"] = a.Exercise.Id.Text,
                ["verdict"] = Kebab.Of(a.Verdict.ToString()),
                ["reasons"] = JsonText.ListOf(a.Allowance.Reasons, r => new JsonObject
                {
                    ["side"] = r.Side?.Word(),
                    ["condition"] = r.Condition.Text,
                    ["kind"] = r.Against is { } against ? Kebab.Of(against.GetType().Name) : "cleared",
                    ["sentence"] = ScreenWords.Of(r, practice),
                    ["answer"] = ScreenWords.AnswerAt(r)?.ToString(),
                    ["at"] = (r.Against?.At.Value ?? a.Exercise.At).ToString(),
                }),
                ["stops"] = JsonText.ListOf(a.Stops.Select(f => f.Message)),
            }),
        };
}
