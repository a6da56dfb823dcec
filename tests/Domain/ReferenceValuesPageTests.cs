using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Domain;

/// <summary>Every published number that the product has stands on <c>reference-values.md</c>, with its source and mark.</summary>
public sealed partial class ReferenceValuesPageTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.Path("src", "Domain", "reference-values.md"));

    private static readonly string[] Marks = ["seen", "second-hand", "memory", "computed"];

    [GeneratedRegex("^  source: (.*)$", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Source();

    [Fact]
    public void Each_figure_that_a_dose_is_shown_beside_has_its_row()
    {
        var figures = typeof(DoseReferences)
            .GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => Assert.IsType<DoseReference>(f.GetValue(null)))
            .ToArray();
        Assert.True(figures.Length > 3);
        Assert.All(figures, f => Assert.True(HasRow(f), $"{f.Cited} has no row."));
        Assert.False(HasRow(figures[0] with { Mark = "memory" }), "A row with another mark was found.");
        Assert.False(HasRow(figures[0] with { Least = 61 }), "A row with another number was found.");
    }

    [Fact]
    public void Each_source_of_a_question_that_everybody_is_asked_is_there()
    {
        var floor = File.ReadAllText(Repository.Path("src", "Reading", "Conditions", "floor.yaml"));
        var sources = Source()
            .Matches(floor)
            .Select(m => m.Groups[1].Value)
            .Where(s => s != "common practice, no source")
            .Distinct();
        Assert.All(sources, s => Assert.Contains(Lines, l => l.Contains(s, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_table_of_motions_has_each_value_of_each_set()
    {
        var head = Lines.Single(l => l.StartsWith("| Motion | AAOS |", StringComparison.Ordinal));
        var sets = CellsOf(head)[1..];
        var rows = Lines
            .SkipWhile(l => l != head)
            .Skip(2)
            .TakeWhile(l => l.Length > 0)
            .Select(CellsOf)
            .Select(c => (Motion: c[0], Values: sets.Zip(c[1..]).Where(v => v.Second.Length > 0)))
            .Select(row => $"{row.Motion}: {string.Join(' ', row.Values.Select(v => $"{v.First} {v.Second}"))}");
        Assert.Equal(
            Measures
                .Select(m => $"{m.Motion.Name}: {string.Join(' ', m.References.Select(r => $"{r.Set} {Number(r.Value)}"))}")
                .Order(StringComparer.Ordinal),
            rows.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Each_error_of_measuring_has_its_row() =>
        Assert.All(
            Measures.SelectMany(
                m => m.Errors,
                (m, e) =>
                    $"| {m.Motion.Name} | {Number(e.Value)} | {RangeErrorText.ConditionsOf(e)} | "
                    + $"{e.Note} | {e.Source} | {e.Mark} |"
            ),
            row => Assert.Contains(row, Lines)
        );

    [Fact]
    public void Every_row_with_a_source_has_one_of_four_marks()
    {
        var group = "";
        var marked = 0;
        foreach (var line in Lines)
        {
            if (line.StartsWith("| Value |", StringComparison.Ordinal))
                group = line;
            if (line.Length == 0)
                group = "";
            if (group.Length == 0 || !line.StartsWith("| ", StringComparison.Ordinal) || line == group || line[2] == '-')
                continue;
            Assert.Contains(CellsOf(line)[2], Marks);
            marked++;
        }

        Assert.True(marked > 20);
    }

    private static Practice Content { get; } =
        PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice
        ?? throw new InvalidOperationException("The demonstration cannot be read.");

    private static Measure[] Measures { get; } =
    [.. Content.Measures.Where(m => m.Motion.Unit != MotionUnit.None && Content.WaysToMeasure(m.Motion).Contains(m))];

    private static bool HasRow(DoseReference figure) =>
        Lines
            .Where(l => l.StartsWith("| ", StringComparison.Ordinal))
            .Select(CellsOf)
            .Any(c =>
                c.Length > 2
                && c[1] == figure.Source
                && c[2] == figure.Mark
                && Holds(c[0], figure.Least)
                && (figure.Most is not { } most || Holds(c[0], most))
            );

    private static bool Holds(string cell, int number) => Regex.IsMatch(cell, $@"\b{Number(number)}\b");

    private static string[] CellsOf(string row) => row.Trim('|').Split('|', StringSplitOptions.TrimEntries);

    private static string Number(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
