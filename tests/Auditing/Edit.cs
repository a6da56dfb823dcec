using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>A change to one file, as a rule's page writes it: lines that begin with <c>- </c> give way to the lines with <c>+
/// </c> that follow them. The lines taken out stand together in the file, and nowhere else in it; the indentation is the file's.
/// With <c>+ </c> lines alone it is a new file.</summary>
/// <param name="KiB">What the file is then filled up to with blanks; null where it keeps its size.</param>
/// <param name="Base64">A file of the practice that is no text, written out; null where it is text.</param>
internal sealed record Edit(string Path, Series<Exchange> Exchanges, int? KiB = null, string? Base64 = null)
{
    /// <summary>A block that says how much a file weighs, as <c>1100 KiB</c>.</summary>
    public static Edit Weighing(string path, string weight) =>
        new(path, [], int.Parse(weight.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture));

    public static Edit OfBytes(string path, IEnumerable<string> lines) => new(path, [], null, string.Concat(lines));

    public static Edit Of(string path, IEnumerable<string> lines)
    {
        var exchanges = new List<(List<string> Out, List<string> In)>();
        foreach (var line in lines)
        {
            var sign = line.Length == 0 ? ' ' : line[0];
            var text = line.Length > 2 ? line[2..] : "";
            if (sign is not ('-' or '+') || (line.Length > 1 && line[1] != ' '))
                throw new InvalidOperationException($"In the edit of {path}, '{line}' begins with neither '- ' nor '+ '.");
            if (exchanges.Count == 0 || (sign == '-' && exchanges[^1].In.Count > 0))
                exchanges.Add(([], []));
            (sign == '-' ? exchanges[^1].Out : exchanges[^1].In).Add(text);
        }

        return new(path, exchanges.Select(e => new Exchange(e.Out.ToSeries(), e.In.ToSeries())).ToSeries());
    }

    /// <param name="before">The file's text; null where there is no such file.</param>
    public string Apply(string? before) =>
        (Exchanges.Aggregate(before, (text, exchange) => exchange.Apply(Path, text)) ?? "").PadRight((KiB ?? 0) * 1024);
}

/// <summary>Lines that stand together, and those that take their place.</summary>
internal sealed record Exchange(Series<string> Out, Series<string> In)
{
    public string Apply(string path, string? before)
    {
        if (Out.Count == 0)
            return before is null
                ? string.Join('\n', In) + "\n"
                : throw new InvalidOperationException($"{path} is already there; say with '- ' which of its lines give way.");
        var lines = (before ?? throw new InvalidOperationException($"There is no {path} to edit.")).Split('\n');
        var places = Enumerable.Range(0, lines.Length).Where(i => Stands(lines, i)).ToArray();
        if (places is not [var at])
            throw new InvalidOperationException(
                $"'{Out[0]}' stands {places.Length} times in {path}; it must stand there once.\n{before}"
            );
        var indent = lines[at][..(lines[at].Length - lines[at].TrimStart().Length)];
        return string.Join('\n', [.. lines[..at], .. In.Select(line => (indent + line).TrimEnd()), .. lines[(at + Out.Count)..]]);
    }

    private bool Stands(string[] lines, int at) =>
        at + Out.Count <= lines.Length
        && Out.Index().All(o => string.Equals(lines[at + o.Index].Trim(), o.Item.Trim(), StringComparison.Ordinal));
}
