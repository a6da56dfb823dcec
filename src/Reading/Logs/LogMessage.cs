using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The lines for a program in what somebody pasted from a message. What messengers do to a line is undone where its sum
/// then fits.</summary>
internal static partial class LogMessage
{
    /// <summary>No line is broken into more pieces; what is longer has no end.</summary>
    private const int MostPieces = 40;

    /// <summary>So many breaks are tried each with and without a blank.</summary>
    private const int MostTried = 6;

    private const int MostLetters = 8000;

    /// <summary>Of somebody who trains every day for years; what has more was made to be slow.</summary>
    private const int MostLines = 10_000;

    /// <summary>Ways that are tried in all, where many lines are broken; then only the two likely ones of each.</summary>
    private const int MostWays = 10_000;

    [GeneratedRegex(@"\bgradus\s+[0-9]{4}-[0-9]{2}-[0-9]{2}", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Beginning();

    [GeneratedRegex(@";\s*sum\s*(?<sum>[0-9a-f]{8})(?![0-9a-z])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex End();

    [GeneratedRegex(@"^\s*(?:>\s?)+", RegexOptions.CultureInvariant)]
    private static partial Regex Quoting();

    public static bool IsIn(string text) => Beginning().IsMatch(text);

    public static LogReading Read(string name, string text, LogRemarks remarks)
    {
        var entries = new List<LogEntry>();
        var ways = MostWays;
        foreach (var (number, (line, pieces)) in LinesIn(text).Index())
        {
            if (number == MostLines)
            {
                remarks.Unread(line, "there are more than 10,000 lines here, and none from here on was taken");
                break;
            }

            var (whole, hasEnd) = WholeOf(pieces, ref ways);
            if (whole is not null && LogMessageLine.Read(name, line, whole, remarks) is { } entry)
                entries.Add(entry);
            else if (whole is null)
            {
                remarks.Alarm(line, LogAlarms.InLine(string.Join(' ', pieces.Take(4))));
                remarks.Unread(
                    line,
                    (
                        hasEnd
                            ? "its sum does not fit what stands there, so it was changed on the way; not taken: "
                            : "its end with the sum is missing; not taken: "
                    ) + Letters.Line(string.Join(' ', pieces.Take(4)))
                );
            }
        }

        return remarks.Reading(LogForm.Message, entries);
    }

    /// <summary>CRC-32 (ISO 3309) in UTF-8, as eight hexadecimal digits.</summary>
    internal static string SumOf(string text) =>
        Crc32.HashToUInt32(Encoding.UTF8.GetBytes(text)).ToString("x8", CultureInfo.InvariantCulture);

    /// <summary>From where one begins to where the next does, in the pieces that it was broken into; and the line, from 1, on
    /// which it begins.</summary>
    private static IEnumerable<(int Line, List<string> Pieces)> LinesIn(string text)
    {
        List<string>? open = null;
        var (begun, number) = (0, 0);
        foreach (var written in text.ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            var line = Quoting().Replace(written, "");
            var starts = Beginning().Matches(line).Select(m => m.Index).Append(line.Length).ToArray();
            if (open is { Count: < MostPieces })
                open.Add(line[..starts[0]]);
            for (var i = 0; i < starts.Length - 1; i++)
            {
                if (open is not null)
                    yield return (begun, open);
                (open, begun) = ([line[starts[i]..starts[i + 1]]], number);
            }
        }

        if (open is not null)
            yield return (begun, open);
    }

    /// <summary>The line as it was before it was sent, without its sum; null where no way of undoing fits the sum.</summary>
    private static (string? Whole, bool HasEnd) WholeOf(List<string> pieces, ref int ways)
    {
        var hasEnd = false;
        foreach (var joined in Joined(pieces, ways > 0))
        {
            ways--;
            if (!joined.Contains("sum", StringComparison.OrdinalIgnoreCase))
                continue;
            foreach (var text in new[] { joined, Blanks(joined), Quotes(joined), Quotes(Blanks(joined)) }.Distinct())
            {
                if (End().Match(text) is not { Success: true } end)
                    continue;
                hasEnd = true;
                var whole = "gradus" + text[..end.Index]["gradus".Length..];
                if (string.Equals(SumOf(whole), end.Groups["sum"].Value, StringComparison.OrdinalIgnoreCase))
                    return (whole, true);
            }
        }

        return (null, hasEnd);
    }

    /// <summary>Up to the piece in which it ends, each break a blank or nothing.</summary>
    private static IEnumerable<string> Joined(List<string> pieces, bool isEachWay)
    {
        var count = 1;
        while (count < pieces.Count && !HasEnd(pieces, count))
            count++;
        var breaks = count - 1;
        if (pieces.Take(count).Sum(p => p.Length) > MostLetters)
            yield break;
        if (breaks > MostTried || !isEachWay)
        {
            yield return string.Join(' ', pieces.Take(count));
            yield return string.Concat(pieces.Take(count));
            yield break;
        }

        for (var ways = 0; ways < 1 << breaks; ways++)
            yield return string.Concat(pieces.Take(count).Select((p, i) => i > 0 && (ways >> (i - 1) & 1) == 0 ? " " + p : p));
    }

    private static bool HasEnd(List<string> pieces, int count)
    {
        // The sum itself is at most three words long, so it lies in the last pieces.
        var last = pieces.Take(count).TakeLast(4).ToArray();
        return End().IsMatch(string.Join(' ', last)) || End().IsMatch(string.Concat(last));
    }

    private static string Blanks(string text) =>
        Spacing.Collapse(string.Concat(text.Where(c => !UnseenLetters.Contains(c) && c != '\u00AD')));

    private static string Quotes(string text) =>
        string.Concat(
            text.Select(c =>
                c switch
                {
                    '\u201C' or '\u201D' or '\u201E' or '\u201F' or '\u00AB' or '\u00BB' => '"',
                    '\u2018' or '\u2019' or '\u201A' or '\u201B' or '\u02BC' => '\'',
                    _ => c,
                }
            )
        );
}
