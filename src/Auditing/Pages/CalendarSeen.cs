using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A calendar file as a calendar reads it: folded lines put together, names in capitals, escapes undone (RFC 5545,
/// sections 3.1 and 3.3.11).</summary>
/// <param name="Events">In the order of the file.</param>
/// <param name="Around">Every line that belongs to no event.</param>
internal sealed record CalendarSeen(Series<CalendarEvent> Events, Series<CalendarLine> Around)
{
    public static CalendarSeen Of(string text)
    {
        var (events, around) = (new List<CalendarEvent>(), new List<CalendarLine>());
        List<CalendarLine>? open = null;
        var at = 0;
        foreach (var line in Unfolded(text).Where(l => l.Line.Length > 0).Select(l => Understood(l.Number, l.Line)))
        {
            if ((line.Name, line.Value.ToUpperInvariant()) is ("BEGIN", "VEVENT"))
            {
                (open, at) = ([], line.Number);
            }
            else if ((line.Name, line.Value.ToUpperInvariant()) is ("END", "VEVENT") && open is not null)
            {
                events.Add(new(open.ToSeries(), at));
                open = null;
            }
            else
            {
                (open ?? around).Add(line);
            }
        }

        return new(events.ToSeries(), around.ToSeries());
    }

    /// <summary>What has no colon is all name.</summary>
    private static CalendarLine Understood(int number, string line)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        var (before, value) = colon < 0 ? (line, "") : (line[..colon], line[(colon + 1)..]);
        var semicolon = before.IndexOf(';', StringComparison.Ordinal);
        var (name, parameters) = semicolon < 0 ? (before, "") : (before[..semicolon], before[(semicolon + 1)..]);
        return new(name.ToUpperInvariant(), parameters.ToUpperInvariant(), Plain(value), number);
    }

    private static IEnumerable<(int Number, string Line)> Unfolded(string text)
    {
        (int Number, string Line)? whole = null;
        foreach (var (index, line) in text.Split('\n').Index())
        {
            var end = line.EndsWith('\r') ? line[..^1] : line;
            if (whole is { } begun && end.Length > 0 && end[0] is ' ' or '\t')
            {
                whole = (begun.Number, begun.Line + end[1..]);
                continue;
            }

            if (whole is { } ended)
                yield return ended;
            whole = (index + 1, end);
        }

        if (whole is { } last)
            yield return last;
    }

    private static string Plain(string value)
    {
        var plain = new System.Text.StringBuilder(value.Length);
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] != '\\' || i + 1 == value.Length)
                plain.Append(value[i]);
            else
                plain.Append(value[++i] is 'n' or 'N' ? '\n' : value[i]);
        }

        return plain.ToString();
    }
}

/// <param name="Line">Where it begins, from 1.</param>
internal sealed record CalendarEvent(Series<CalendarLine> Lines, int Line)
{
    /// <summary>What it says first under that name; empty where it says nothing.</summary>
    public string this[string name] => Lines.FirstOrDefault(l => l.Name == name)?.Value ?? "";
}

/// <param name="Name">As <c>DTSTART</c>.</param>
/// <param name="Parameters">What stands between name and value, in capitals, as <c>VALUE=DATE</c>; mostly empty.</param>
/// <param name="Number">Where it begins, from 1.</param>
internal sealed record CalendarLine(string Name, string Parameters, string Value, int Number);
