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

    private readonly List<(int, Wording.Line)> planned;
    private readonly List<StrangeLine> strange = [];
    private readonly List<MissingText> missing = [];
    private readonly WordingSearch search = new();
    private readonly Series<TextLine> lines;
    private TextLine? last;

    private WordingReader(Series<TextLine> lines) => (this.lines, planned) = (lines, new(lines.Count));

    public static Spoken Read(Series<TextLine> lines, Wording wording)
    {
        var reader = new WordingReader(lines);
        var place = WordingPlace.At(Wording.Order(wording));
        for (var number = 0; number < lines.Count; number++)
        {
            if (reader.Fit(number, place) is not { } path)
            {
                reader.strange.Add(new(lines[number], reader.last));
                continue;
            }

            foreach (var step in path)
            {
                if (step.Passed.Needed > 0)
                    reader.Miss(step.Passed.InOrder());
                reader.planned.Add((number, step.Text));
                place = step.After;
            }

            reader.last = lines[number];
        }

        for (WordingPlace? open = place; open is not null; open = open.Up)
            reader.Miss(open.Rest());
        return new(reader.planned.ToSeries(), reader.strange.ToSeries(), reader.missing.ToSeries());
    }

    private void Miss(IEnumerable<Wording> passed)
    {
        foreach (var part in passed)
            if (part.Needed > 0)
                missing.AddRange(NeededIn(part).Select(text => new MissingText(text, last)));
    }

    private static IEnumerable<Wording.Line> NeededIn(Wording wording) =>
        wording switch
        {
            Wording.Line line => line.IsNeeded ? [line] : [],
            Wording.InOrder order => order.Parts.SelectMany(NeededIn),
            Wording.InAnyOrder any => any.Parts.SelectMany(NeededIn),
            Wording.Optional => [],
            _ => throw new NotSupportedException(wording.GetType().Name),
        };

    /// <summary>The texts that make up the line whole, from that place on; null where there are none.</summary>
    private WordingStep[]? Fit(int number, WordingPlace from)
    {
        foreach (var allowance in Allowances)
            if (search.Several(lines[number], from, allowance) is { Count: > 0 } paths)
                return paths.Count == 1 ? paths[0] : Best([.. paths], number);
        return null;
    }

    /// <summary>Where the plan has the same text in several places, it is the one behind which most of the next lines fit too,
    /// rather a text that must be there.</summary>
    private WordingStep[]? Best(WordingStep[][] paths, int number) =>
        paths.MaxBy(path => (2 * Following(number + 1, path[^1].After)) + (path[^1].Text.IsNeeded ? 1 : 0));

    /// <summary>How many of the next lines fit behind that place.</summary>
    private int Following(int from, WordingPlace place)
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
