using System.Text.Json;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The same for other programs: <c>{"clients": [{"client", "exercises": [{"exercise", "verdict", "reasons": [{"side",
/// "condition", "kind", "sentence", "answer", "at"}]}]}], "matrix": [{"exercise", "condition", "bearing"}]}</c>; verdict is
/// allowed, limited or forbidden, side left, right or null for every side, answer and at are places (file:line:column), bearing
/// is not-with, clear-first or loads.</summary>
internal static class ScreenJson
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(Practice practice, IEnumerable<Client> clients) =>
        JsonSerializer.Serialize(
            new
            {
                Clients = clients.Select(client => new
                {
                    Client = client.Id.Text,
                    Exercises = Allowance
                        .Of(practice, client)
                        .Select(a => new
                        {
                            Exercise = a.Exercise.Id.Text,
                            Verdict = Kebab.Of(a.Verdict.ToString()),
                            Reasons = a.Reasons.Select(r => new
                            {
                                Side = r.Side?.Word(),
                                Condition = r.Condition.Text,
                                Kind = r.Against is { } against ? Kebab.Of(against.GetType().Name) : "cleared",
                                Sentence = ScreenWords.Of(r, practice),
                                Answer = ScreenWords.AnswerAt(r)?.ToString(),
                                At = (r.Against?.At.Value ?? a.Exercise.At).ToString(),
                            }),
                        }),
                }),
                Matrix = from exercise in practice.Exercises
                from condition in Screening.Asked(practice)
                let bearing = ConditionEffects.Of(exercise, condition)
                where bearing != ConditionEffect.None
                select new
                {
                    Exercise = exercise.Id.Text,
                    Condition = condition.Id.Text,
                    Bearing = Kebab.Of(bearing.ToString()),
                },
            },
            Indented
        );
}
