using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A calendar file as a calendar reads it: folded lines put together, names in capitals, escapes undone (RFC 5545, sections 3.1 and 3.3.11).</summary>
/// <param name="Events">In the order of the file; each its properties by name, as <c>DTSTART</c>, with their parameters taken off.</param>
internal sealed record CalendarReading(Series<CalendarEvent> Events)
{
    public static CalendarReading Of(string text)
    {
        var events = new List<CalendarEvent>();
        Dictionary<string, string>? open = null;
        var at = 0;
        foreach (var (number, line) in Unfolded(text))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0) continue;
            var (name, value) = (line[..colon].Split(';')[0].ToUpperInvariant(), line[(colon + 1)..]);
            if ((name, value) is ("BEGIN", "VEVENT"))
            {
                (open, at) = (new(StringComparer.Ordinal), number);
            }
            else if ((name, value) is ("END", "VEVENT") && open is not null)
            {
                events.Add(new(open, at));
                open = null;
            }
            else
            {
                open?.TryAdd(name, Plain(value));
            }
        }

        return new(events.ToSeries());
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

            if (whole is { } ended) yield return ended;
            whole = (index + 1, end);
        }

        if (whole is { } last) yield return last;
    }

    private static string Plain(string value)
    {
        var plain = new System.Text.StringBuilder(value.Length);
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] != '\\' || i + 1 == value.Length) plain.Append(value[i]);
            else plain.Append(value[++i] is 'n' or 'N' ? '\n' : value[i]);
        }

        return plain.ToString();
    }
}

/// <param name="Line">Where it begins, from 1.</param>
internal sealed record CalendarEvent(IReadOnlyDictionary<string, string> Properties, int Line)
{
    public string this[string name] => Properties.GetValueOrDefault(name) ?? "";
}
