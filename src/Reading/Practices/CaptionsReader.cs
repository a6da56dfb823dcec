using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>clips/ID.LANG.vtt</c>: captions as WebVTT (W3C), of which only this is read: the first line, remarks, and cues
/// with times in order and plain words. Remarks stay with the coach.</summary>
internal static partial class CaptionsReader
{
    private const string Remedy =
        "Write the times of each caption on a line, 00:01.000 --> 00:04.500, the words below it, and an empty line between two.";

    [GeneratedRegex(
        @"^(?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3})[ \t]+-->[ \t]+(?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3})[ \t]*$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Times();

    /// <summary>The captions; none where anything is wrong, which findings say.</summary>
    public static Series<Cue> Read(SourceFile sheet)
    {
        var lines = sheet.Text.Split('\n');
        if (lines[0] is not "WEBVTT" && !lines[0].StartsWith("WEBVTT ", StringComparison.Ordinal))
            return Refused(
                sheet,
                1,
                "Captions begin with a line that says WEBVTT.",
                "Write WEBVTT on the first line, and leave the second empty."
            );
        var (cues, whole) = (new List<Cue>(), true);
        foreach (var (first, block) in Blocks(lines))
        {
            if (block[0] == "NOTE" || block[0].StartsWith("NOTE ", StringComparison.Ordinal))
                continue;
            if (CueIn(sheet, first, block, cues.Count > 0 ? cues[^1].From : 0) is { } cue)
                cues.Add(cue);
            else
                whole = false;
        }

        return !whole ? []
            : cues.Count > 0 ? cues.ToSeries()
            : Refused(sheet, lines.Length, "There is no caption in this file.", Remedy);
    }

    /// <summary>Lines that stand together, each with the number of the first of them; those that belong to the first line are
    /// left out.</summary>
    private static IEnumerable<(int First, string[] Lines)> Blocks(string[] lines)
    {
        for (var (at, end) = (0, 0); at < lines.Length; at = end + 1)
        {
            for (end = at; end < lines.Length && lines[end].Trim().Length > 0; )
                end++;
            if (at > 0 && end > at)
                yield return (at + 1, lines[at..end]);
        }
    }

    /// <param name="after">When the caption before it begins.</param>
    private static Cue? CueIn(SourceFile sheet, int first, string[] block, int after)
    {
        // A line above the times is the caption's own name.
        var timed = block[0].Contains("-->", StringComparison.Ordinal) || block.Length == 1 ? 0 : 1;
        if (Times().Match(block[timed]) is not { Success: true } times)
            return No(sheet, first + timed, "These are no times of a caption, or something stands beside them.", Remedy);
        var (from, until) = (Moment(times, 1), Moment(times, 5));
        if (until <= from)
            return No(sheet, first + timed, "This caption ends before it begins.", "Look at the two times.");
        if (from < after)
            return No(
                sheet,
                first + timed,
                "This caption begins before the one above it.",
                "Put the captions in the order of their times."
            );
        var text = block[(timed + 1)..];
        if (text.Length == 0)
            return No(sheet, first + timed, "This caption has no words.", Remedy);
        for (var n = 0; n < text.Length; n++)
            if (text[n].AsSpan().ContainsAny('<', '>'))
                return No(
                    sheet,
                    first + timed + 1 + n,
                    "Captions are plain words, without anything in angle brackets.",
                    "Take it out; who speaks can be said in words."
                );
        return new(from, until, string.Join('\n', text.Select(Plain)));
    }

    private static int Moment(Match times, int group) =>
        (((((Number(times, group) * 60) + Number(times, group + 1)) * 60) + Number(times, group + 2)) * 1000)
        + Number(times, group + 3);

    /// <summary>No clip is longer than 99 hours.</summary>
    private static int Number(Match times, int group) =>
        times.Groups[group].Success
            ? Math.Min(
                999,
                int.Parse(times.Groups[group].ValueSpan[^Math.Min(3, times.Groups[group].Length)..], CultureInfo.InvariantCulture)
            )
            : 0;

    private static string Plain(string line) =>
        line.Trim()
            .Replace("&lt;", "<", StringComparison.Ordinal)
            .Replace("&gt;", ">", StringComparison.Ordinal)
            .Replace("&nbsp;", " ", StringComparison.Ordinal)
            .Replace("&amp;", "&", StringComparison.Ordinal);

    private static Cue? No(SourceFile sheet, int line, string message, string help)
    {
        sheet.Fault(Faults.CaptionsUnreadable, sheet.At(line, 1), message, help, sheet.Line(line).Length);
        return null;
    }

    private static Series<Cue> Refused(SourceFile sheet, int line, string message, string help)
    {
        No(sheet, line, message, help);
        return [];
    }
}
