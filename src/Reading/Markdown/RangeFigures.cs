using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What stands in braces with a colon: <c>{reading: hip extension left}</c>, <c>{demand: hip extension rear leg}</c>.
/// Whether the client has such a number is judged by a rule.</summary>
internal static partial class RangeFigures
{
    private static readonly string[] Kinds = ["reading", "demand"];

    [GeneratedRegex(@"^\{(reading|demand): ?([a-z][^{}\n]*)\}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    public static bool Is(string written) => Shape().IsMatch(written);

    /// <summary>What is written where something else, or nothing, was meant; null where it is nothing of the kind.</summary>
    public static (string Message, string Help)? Said(string written, bool allowed)
    {
        var colon = written.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || Nearest.To(written[1..colon].Trim(), Kinds) is not { } kind)
            return null;
        return allowed
            ? (
                $"{Quote.Of(written)} is not filled in as it is written.",
                $"Write {{{kind}: hip extension left}}: the motion, then left, right or what the sport calls that side."
            )
            : (
                $"{Quote.Of(written)} stands for nothing here.",
                "Say it in a letter or in an exercise's own text: only there it is filled in for each client."
            );
    }

    /// <summary>A finding, and the text as it stands, where no such number can be.</summary>
    /// <param name="written">Of the right shape.</param>
    public static Inline Of(SourceFile sheet, string written, Location at, KnownIds known)
    {
        var match = Shape().Match(written);
        var kind = match.Groups[1].Value == "demand" ? RangeFigureKind.Demand : RangeFigureKind.Reading;
        var (name, side) = Split(Spacing.Collapse(match.Groups[2].Value), known);
        var nameAt = at with { Column = at.Column + match.Groups[2].Index };
        var plain = new Inline.Plain(written);
        if (known.MeasureOf(sheet, new(name, nameAt)) is not { Motion: var motion })
            return plain;
        if (motion.Unit == MotionUnit.None)
            return Refused($"{Quote.Of(motion.Name)} is not measured.", "Name a motion that is, or say it without braces.");
        if (motion.IsPaired && side is null)
            return Refused(
                $"This does not say which side of {motion.Name}.",
                "Write left, right, or what the sport calls that side, behind the motion."
            );
        if (!motion.IsPaired && side is not null)
            return Refused($"{Quote.Of(motion.Name)} has no left and right.", $"Take {Quote.Of(side)} out.");
        return new Inline.RangeFigure(kind, motion, side, written, at);

        Inline Refused(string message, string help)
        {
            sheet.Fault(Faults.ValueWrong, at, message, help, written.Length);
            return plain;
        }
    }

    /// <summary>The longest beginning that is a motion, or is nearly one; the whole where none is.</summary>
    private static (string Motion, string? Side) Split(string what, KnownIds known)
    {
        var words = what.Split(' ');
        var lengths = Enumerable.Range(1, words.Length).ToArray();
        var length = lengths.LastOrDefault(n => known.Measures.ContainsKey(Beginning(n)));
        if (length == 0)
            length = lengths.FirstOrDefault(n =>
                words.Length - n is 1 or 2 && Nearest.To(Beginning(n), known.Measures.Keys) is not null
            );
        return length == 0 || length == words.Length ? (what, null) : (Beginning(length), string.Join(' ', words[length..]));

        string Beginning(int n) => string.Join(' ', words[..n]);
    }
}
