namespace Gradus.Tests.Reading;

/// <summary>A lawful dose line and what kinds of thing stand in it.</summary>
internal sealed record GeneratedLine(string Text, IReadOnlySet<string> Kinds);

/// <summary>Lines made along the grammar, written in every way it allows; the same on every run.</summary>
internal static class GeneratedLines
{
    /// <summary>Every kind that a sample must hold.</summary>
    public static readonly string[] Kinds =
    [
        "no sets",
        "sets",
        "range of sets",
        "bare",
        "brackets",
        "one action in brackets",
        "group",
        "repetitions",
        "range",
        "hold",
        "breathe",
        "press",
        "pull",
        "raise",
        "move",
        "carry",
        "seconds",
        "minutes",
        "minutes and seconds",
        "time to time",
        "breaths",
        "reps",
        "metres",
        "steady",
        "ramp",
        "felt",
        "rest",
        "pause",
        "switch",
        "each side",
        "per side",
        "alternate sides",
        "both sides",
        "on",
        "plus",
        "tempo",
        "fast beat",
        "load",
        "leave",
        "glued",
        "capitals",
        "sign for x",
        "en dash",
        "white space",
    ];

    /// <summary>As many lawful lines; the law is that of <see cref="DoseMeaning"/>.</summary>
    public static IEnumerable<GeneratedLine> Take(int count, ulong seed)
    {
        var dice = new Dice(seed);
        return Endless().Where(line => DoseGrammar.LawfulMeanings(line.Text).Count > 0).Take(count);

        IEnumerable<GeneratedLine> Endless()
        {
            while (true)
                yield return new LineMaker(dice).Make();
        }
    }

    /// <summary>How often each kind stands in the lines.</summary>
    public static IReadOnlyDictionary<string, int> Spread(IEnumerable<GeneratedLine> lines)
    {
        var all = lines
            .SelectMany(line => line.Kinds)
            .GroupBy(kind => kind, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        return Kinds.ToDictionary(kind => kind, kind => all.GetValueOrDefault(kind), StringComparer.Ordinal);
    }

    /// <summary>Prints the spread, and fails where a kind is missing.</summary>
    public static void ShowSpread(IEnumerable<GeneratedLine> lines, ITestOutputHelper output)
    {
        var spread = Spread(lines);
        output.WriteLine(string.Join(", ", spread.Select(kind => $"{kind.Key} {kind.Value}")));
        Assert.DoesNotContain(0, spread.Values);
    }
}
