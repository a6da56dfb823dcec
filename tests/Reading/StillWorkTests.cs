using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>The still work of the demonstration (press, pull, raise) is of many kinds: no exercise asks for the same actions in
/// the same order as another, in its own dose or in any client's week.</summary>
public sealed partial class StillWorkTests
{
    [GeneratedRegex(@"\d+(?:-\d+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@" at (?:effort n|n%)(?! to)", RegexOptions.CultureInvariant)]
    private static partial Regex OneEffort();

    [Fact]
    public void No_exercise_has_the_pattern_of_another()
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice;
        Assert.NotNull(practice);
        var own =
            from exercise in practice.Exercises
            where exercise.Dose.Dose is not null
            select (exercise.Id, Dose: exercise.Dose.Dose!);
        var weeks =
            from training in Planned.Trainings(practice)
            from use in training.Value.Uses
            from week in use.Weeks
            select (use.Exercise.Id, Dose: week.Dose.AsDose);
        var patterns = own.Concat(weeks)
            .Where(d => d.Dose.Actions.Any(a => a.Verb is Verb.Press or Verb.Pull or Verb.Raise))
            .Select(d => (d.Id, Pattern: Pattern(d.Dose.ToString())))
            .Distinct()
            .GroupBy(d => d.Pattern, d => d.Id.Text)
            .ToArray();
        Assert.Equal([], patterns.Where(p => p.Count() > 1).Select(p => $"{p.Key}: {string.Join(", ", p)}"));
        Assert.True(patterns.Length >= 8, string.Join('\n', patterns.Select(p => p.Key)));
    }

    [Theory]
    [InlineData("2-3 x (press 10 s at 40% then pull 12 s at 50%), rest 30 s, each side", "(press n s then pull n s)")]
    [InlineData("2 x 3-4 x raise 5 s at effort 6, pause 4 s, both sides", "n x raise n s")]
    [InlineData("2 x press 20-40 s at 15-20% to 60% in 4 steps, rest 30 s", "press n s at n% to n% in n steps")]
    [InlineData("1 x (2 x (press 5 s at 20% then hold 15 s)), each side", "(n x (press n s then hold n s))")]
    public void A_pattern_is_what_is_done_without_how_much(string line, string pattern) => Assert.Equal(pattern, Pattern(line));

    private static string Pattern(string line)
    {
        var work = line.Split(", ")[0];
        return OneEffort().Replace(Number().Replace(work[(work.IndexOf(" x ", StringComparison.Ordinal) + 3)..], "n"), "");
    }
}
