using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The lines of a page + what it must say → what is planned, strange and missing. A line is what a paragraph, a heading
/// or a cell holds; it is one text of the plan, or several, with nothing but marks of punctuation between them.</summary>
internal sealed class WordingReader
{
    /// <summary>How many needed texts are passed over at most before one is found that is there: first none, then a few, then any
    /// number.</summary>
    private static readonly int[] Allowances = [0, 3, int.MaxValue];

    /// <summary>How many lines are looked at to choose among them.</summary>
    private const int Ahead = 3;

    private readonly List<(int, Wording.Line)> planned = [];
    private readonly List<StrangeLine> strange = [];
    private readonly List<MissingText> missing = [];
    private readonly WordingSearch search = new();
    private TextLine? last;

    private WordingReader() { }

    public static Spoken Read(Series<TextLine> lines, Wording wording)
    {
        var reader = new WordingReader();
        var place = WordingPlace.At(Wording.Order(wording));
        foreach (var (number, line) in lines.Index())
        {
            if (reader.Fit(lines, number, place) is not { } path)
            {
                reader.strange.Add(new(line, reader.last));
                continue;
            }

            foreach (var step in path)
            {
                reader.Miss(step.Passed.InOrder());
                reader.planned.Add((number, step.Text));
                place = step.After;
            }

            reader.last = line;
        }

        for (WordingPlace? open = place; open is not null; open = open.Up)
            reader.Miss(open.Rest());
        return new(reader.planned.ToSeries(), reader.strange.ToSeries(), reader.missing.ToSeries());
    }

    private void Miss(IEnumerable<Wording> passed) =>
        missing.AddRange(passed.SelectMany(NeededIn).Select(text => new MissingText(text, last)));

    private static IEnumerable<Wording.Line> NeededIn(Wording wording) =>
        wording switch
        {
            Wording.Line line => line.IsNeeded ? [line] : [],
            Wording.InOrder order => order.Parts.SelectMany(NeededIn),
            Wording.InAnyOrder any => any.Parts.SelectMany(NeededIn),
            Wording.Optional => [],
            _ => throw new NotSupportedException(wording.GetType().Name),
        };

    /// <summary>The texts that make up the line whole, from that place on; null where there are none. Where the plan has the same
    /// text in several places, it is the one behind which most of the next lines fit too, rather a text that must be
    /// there.</summary>
    private WordingStep[]? Fit(Series<TextLine> lines, int number, WordingPlace from)
    {
        foreach (var allowance in Allowances)
        {
            var paths = search.Several(lines[number], from, allowance);
            if (paths.Count == 1)
                return paths[0];
            if (paths.Count > 1)
                return paths
                    .ToArray()
                    .MaxBy(path => (2 * Following(lines, number + 1, path[^1].After)) + (path[^1].Text.IsNeeded ? 1 : 0));
        }

        return null;
    }

    /// <summary>How many of the next lines fit behind that place.</summary>
    private int Following(Series<TextLine> lines, int from, WordingPlace place)
    {
        var fitting = 0;
        for (var number = from; number < Math.Min(from + Ahead, lines.Count); number++)
            if (search.First(lines[number], place) is { } path)
            {
                place = path[^1].After;
                fitting++;
            }

        return fitting;
    }
}
