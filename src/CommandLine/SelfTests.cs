using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What clients measured alone, as lines for <c>readings.csv</c>: the coach looks at the numbers and types them in, or
/// asks for others.</summary>
internal static class SelfTests
{
    /// <summary>One sentence for each exercise and side that was measured.</summary>
    public static IEnumerable<string> In(LogEntry entry) =>
        from exercise in entry.Exercises
        where exercise.Measured.Count > 0
        select Sentence(entry.Day, exercise);

    private static string Sentence(DateOnly day, LoggedExercise exercise)
    {
        var numbers = string.Join(", ", exercise.Measured.Select(Text));
        var which = exercise.Side is { } side ? $"{side.Word()} {HomeTest.Offered}" : HomeTest.Offered;
        var spread = exercise.Measured.Max() - exercise.Measured.Min();
        if (exercise.Measured.Count < HomeTest.Tries)
            return $"{day.Iso()}, {which}: {numbers} {HomeTest.Unit}; three tries make a reading, so ask for them again.";
        if (spread > HomeTest.FarApart)
            return $"{day.Iso()}, {which}: {numbers} {HomeTest.Unit} are {Text(spread)} apart; ask for three others.";
        var mean = Math.Round(exercise.Measured.Average(), 1, MidpointRounding.AwayFromZero);
        return $"{day.Iso()}, {which}: {numbers} {HomeTest.Unit}; for readings.csv: {day.Iso()},{HomeTest.Offered},"
            + $"{exercise.Side?.Word()},active,{Text(mean)},{HomeTest.Unit},tape at home";
    }

    private static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
