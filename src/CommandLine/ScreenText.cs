using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What each client may do, and the table of exercises and conditions, for the coach at the keyboard.</summary>
internal static class ScreenText
{
    public static void Write(TextWriter to, Practice practice, IEnumerable<(Client Client, ScreenedToday Screened)> clients)
    {
        foreach (var (client, screened) in clients)
            OfClient(to, practice, client, screened);
        Table(to, practice);
    }

    private static void OfClient(TextWriter to, Practice practice, Client client, ScreenedToday screened)
    {
        var exercises = screened.Exercises;
        var counts = Enum.GetValues<Verdict>()
            .Select(v => string.Create(CultureInfo.InvariantCulture, $"{exercises.Count(a => a.Verdict == v)} {Word(v)}"));
        to.WriteLine($"{client.Name}: {string.Join(", ", counts)}");
        to.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"  answered {client.Answered.Iso()}, valid until {Validity.AnswersUntil(practice, client).Iso()}"
            )
        );
        if (client.Born.IsIn(AgeBand.Under18, client.Programme))
            to.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  under 18: effort at most {practice.Card.Settings.YouthEffort} %; {Agreement(client)}"
                )
            );
        foreach (var stop in screened.Everything)
            to.WriteLine($"  nothing    {stop.Message} {stop.At}");
        foreach (var one in exercises.OrderByDescending(e => e.Verdict))
        {
            var exercise = one.Exercise;
            if (one.Allowance.Reasons.Count == 0 && one.Stops.Count == 0)
                to.WriteLine($"  {Word(one.Verdict), -9}  {exercise.Title}; {exercise.At}");
            foreach (var reason in one.Allowance.Reasons)
                to.WriteLine(
                    $"  {Word(one.Verdict), -9}  "
                        + $"{exercise.Title}{(reason.Side is { } side ? $", on the {side.Word()}" : "")}: "
                        + $"{ScreenWords.Of(reason, practice)}; {ScreenWords.PlaceOf(reason, exercise)}"
                );
            foreach (var stop in one.Stops)
                to.WriteLine($"  {Word(one.Verdict), -9}  {exercise.Title}: {stop.Message} {stop.At}");
        }

        to.WriteLine();
    }

    private static string Agreement(Client client) =>
        client.Agreed.Guardian is { } day ? $"a parent or guardian agreed on {day.Iso()}" : "no parent or guardian has agreed";

    private static void Table(TextWriter to, Practice practice)
    {
        var conditions = Screening.Asked(practice);
        var width = practice.Exercises.Select(e => e.Id.Text.Length).DefaultIfEmpty(0).Max();
        to.WriteLine("Exercises and conditions: N never, C needs clearance, L not on the affected side, . no effect");
        var numbers = conditions.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1, 3}"));
        to.WriteLine($"  {new string(' ', width)}{string.Concat(numbers)}");
        foreach (var exercise in practice.Exercises)
        {
            var letters = conditions.Select(c => "  " + Letter(ConditionEffects.Of(exercise, c)));
            to.WriteLine($"  {exercise.Id.Text.PadRight(width)}{string.Concat(letters)}");
        }

        foreach (var (index, condition) in conditions.Index())
            to.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{index + 1, 4}  {condition.Id}{(condition.IsAlwaysAsked ? ", asked of everybody" : "")}"
                )
            );
    }

    private static char Letter(ConditionEffect bearing) =>
        bearing switch
        {
            ConditionEffect.NotWith => 'N',
            ConditionEffect.ClearFirst => 'C',
            ConditionEffect.Loads => 'L',
            _ => '.',
        };

    private static string Word(Verdict verdict) => verdict.ToString().ToLowerInvariant();
}
