using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What is wrong in one stylesheet: one for each cause, with its first place and how often.</summary>
internal sealed class StyleWrongs(string css)
{
    private const int CauseLimit = 40;
    private const int WordLimit = 60;
    private const int OthersLimit = 12;

    private readonly Dictionary<string, StyleWrong> wrongs = new(StringComparer.Ordinal);
    private readonly List<string> order = [];
    private int[]? lines;

    /// <param name="same">What is said once, wherever else it is so.</param>
    public void Add(int from, string same, string why, string help)
    {
        if (wrongs.TryGetValue(same, out var already))
            wrongs[same] = already with
            {
                Count = already.Count + 1,
                Others = already.Others.Count < OthersLimit ? [.. already.Others, Place(from).Line] : already.Others,
            };
        else if (order.Count < CauseLimit)
        {
            var (line, column) = Place(from);
            wrongs.Add(same, new(line, column, why, help, 1));
            order.Add(same);
        }
    }

    public Series<StyleWrong> All() => order.Select(same => wrongs[same]).ToSeries();

    /// <summary>Line and column, both from 1.</summary>
    public (int Line, int Column) Place(int at)
    {
        lines ??= [0, .. css.Index().Where(s => s.Item == '\n').Select(s => s.Index + 1)];
        var line = Array.BinarySearch(lines, at);
        line = line < 0 ? ~line - 1 : line;
        return (line + 1, at - lines[line] + 1);
    }

    /// <summary>A piece of the sheet in one line and in quotes, for a sentence.</summary>
    public string Short(int from, int until)
    {
        var text = Spacing.Collapse(css[from..Math.Min(Math.Min(until, from + (3 * WordLimit)), css.Length)]);
        return text.Length > WordLimit ? $"'{text[..WordLimit]}…'" : $"'{text}'";
    }
}
