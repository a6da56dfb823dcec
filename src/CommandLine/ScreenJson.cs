using System.Text.Json;
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
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(Practice practice, IEnumerable<(Client Client, ScreenedToday Screened)> clients) =>
        JsonSerializer.Serialize(
            new
            {
                Clients = clients.Select(c => new
                {
                    Client = c.Client.Id.Text,
                    Stops = c.Screened.Everything.Select(f => f.Message),
                    Exercises = c.Screened.Exercises.Select(a => new
                    {
                        Exercise = a.Exercise.Id.Text,
                        Verdict = Kebab.Of(a.Verdict.ToString()),
                        Reasons = a.Allowance.Reasons.Select(r => new
                        {
                            Side = r.Side?.Word(),
                            Condition = r.Condition.Text,
                            Kind = r.Against is { } against ? Kebab.Of(against.GetType().Name) : "cleared",
                            Sentence = ScreenWords.Of(r, practice),
                            Answer = ScreenWords.AnswerAt(r)?.ToString(),
                            At = (r.Against?.At.Value ?? a.Exercise.At).ToString(),
                        }),
                        Stops = a.Stops.Select(f => f.Message),
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
