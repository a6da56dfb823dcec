using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The lines of a page + what it must say → what is planned, strange and missing. A line is what a paragraph, a heading
/// or a cell holds; it is one text of the plan, or several, with nothing but marks of punctuation between them.</summary>
internal sealed class WordingReader
{
    /// <summary>What may stand between two texts in a line.</summary>
    private const string Between = " ·:,;.–—-|/()\u00a0";

    /// <summary>How many needed texts are passed over at most before one is found that is there: first none, then a few, then any
    /// number.</summary>
    private static readonly int[] Allowances = [0, 3, int.MaxValue];

    /// <summary>In how many places of the plan a text is looked for.</summary>
    private const int Compared = 8;

    /// <summary>How many lines are looked at to choose among them.</summary>
    private const int Ahead = 3;

    private readonly List<(int, Wording.Line)> planned = [];
    private readonly List<StrangeLine> strange = [];
    private readonly List<MissingText> missing = [];
    private TextLine? last;

    private WordingReader() { }

    public static Spoken Read(Series<TextLine> lines, Wording wording)
    {
        var reader = new WordingReader();
        var place = new Place(Wording.Order(wording), new Done(1), null);
        foreach (var (number, line) in lines.Index())
        {
            if (Fit(lines, number, place) is not { } path)
            {
                reader.strange.Add(new(line, reader.last));
                continue;
            }

            foreach (var step in path)
            {
                reader.Miss(step.Passed);
                reader.planned.Add((number, step.Text));
                place = step.After;
            }

            reader.last = line;
        }

        for (Place? open = place; open is not null; open = open.Up)
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
    private static Series<Step>? Fit(Series<TextLine> lines, int number, Place from)
    {
        foreach (var allowance in Allowances)
        {
            var paths = Fits(lines[number], 0, from, allowance).Take(Compared).Select(path => path.ToSeries()).ToArray();
            if (paths.Length == 1)
                return paths[0];
            if (paths.Length > 1)
                return paths.MaxBy(path => (2 * Following(lines, number + 1, path[^1].After)) + (path[^1].Text.IsNeeded ? 1 : 0));
        }

        return null;
    }

    /// <summary>How many of the next lines fit behind that place.</summary>
    private static int Following(Series<TextLine> lines, int from, Place place)
    {
        var fitting = 0;
        for (var number = from; number < Math.Min(from + Ahead, lines.Count); number++)
            if (Fits(lines[number], 0, place, 0).FirstOrDefault() is { } path)
            {
                place = path.Last().After;
                fitting++;
            }

        return fitting;
    }

    private static IEnumerable<IEnumerable<Step>> Fits(TextLine line, int at, Place from, int allowance)
    {
        foreach (var step in Next(from, allowance).Where(s => s.Text.Mark == line.Mark))
        foreach (var text in step.Text.Texts.Where(t => Stands(t, line.Text, at)))
        {
            var end = at + text.Length;
            while (end < line.Text.Length && Between.Contains(line.Text[end], StringComparison.Ordinal))
                end++;
            if (end == line.Text.Length)
                yield return [step];
            else
                foreach (var rest in Fits(line, end, step.After, allowance))
                    yield return rest.Prepend(step);
        }
    }

    /// <summary>Whether the text stands there in the line, not torn out of a longer word.</summary>
    private static bool Stands(string text, string line, int at)
    {
        var end = at + text.Length;
        return string.CompareOrdinal(line, at, text, 0, text.Length) == 0
            && (end == line.Length || !char.IsLetterOrDigit(line[end - 1]) || !char.IsLetterOrDigit(line[end]));
    }

    /// <summary>Every text that may come next, with what is passed over for it.</summary>
    private static IEnumerable<Step> Next(Place? from, int allowance)
    {
        var passed = Passed.Nothing;
        for (var place = from; place is not null; place = place.Up)
        {
            foreach (var step in Inside(place, passed, allowance))
                yield return step;
            foreach (var part in place.Rest())
            {
                passed = passed.With(part);
                if (passed.Needed > allowance)
                    yield break;
            }
        }
    }

    /// <summary>The texts of what is left of a place.</summary>
    private static IEnumerable<Step> Inside(Place place, Passed before, int allowance)
    {
        var passed = before;
        foreach (var (index, part) in place.Left())
        {
            foreach (
                var step in Into(
                    part,
                    place with
                    {
                        Done = place.IsInOrder ? place.Done.Until(index) : place.Done.With(index),
                    },
                    passed,
                    allowance
                )
            )
                yield return step;
            if (!place.IsInOrder)
                continue;
            passed = passed.With(part);
            if (passed.Needed > allowance)
                yield break;
        }
    }

    private static IEnumerable<Step> Into(Wording part, Place after, Passed passed, int allowance) =>
        part switch
        {
            Wording.Line line => [new(line, after, passed)],
            Wording.Optional optional => Into(optional.Part, after, passed, allowance),
            _ => Inside(new(part, new Done(PartsOf(part).Count), after), passed, allowance),
        };

    private static Series<Wording> PartsOf(Wording wording) =>
        wording switch
        {
            Wording.InOrder order => order.Parts,
            Wording.InAnyOrder any => any.Parts,
            _ => throw new NotSupportedException(wording.GetType().Name),
        };

    /// <param name="After">Where it goes on.</param>
    private sealed record Step(Wording.Line Text, Place After, Passed Passed);

    /// <summary>What has been passed over, the last first.</summary>
    private sealed record Passed(Wording? Part, Passed? Before, int Needed) : IEnumerable<Wording>
    {
        public static readonly Passed Nothing = new(null, null, 0);

        public Passed With(Wording part) => part.Needed == 0 ? this : new(part, this, Needed + part.Needed);

        public IEnumerator<Wording> GetEnumerator() => All().Reverse().GetEnumerator();

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();

        private IEnumerable<Wording> All()
        {
            for (var at = this; at is { Part: { } part }; at = at.Before)
                yield return part;
        }
    }

    /// <summary>A part of the page that is begun.</summary>
    /// <param name="Up">The part that it belongs to.</param>
    private sealed record Place(Wording Whole, Done Done, Place? Up)
    {
        public bool IsInOrder => Whole is Wording.InOrder;

        /// <summary>The parts that may come yet.</summary>
        public IEnumerable<(int Index, Wording Part)> Left()
        {
            var parts = PartsOf(Whole);
            var first = IsInOrder ? Done.Last + 1 : 0;
            for (var i = first; i < parts.Count; i++)
                if (!Done.Has(i))
                    yield return (i, parts[i]);
        }

        public IEnumerable<Wording> Rest() => Left().Select(l => l.Part);
    }

    /// <summary>Which of some parts are begun or done.</summary>
    private sealed record Done
    {
        private readonly ulong[] bits;

        public Done(int parts)
            : this(new ulong[(parts + 63) / 64], -1) { }

        private Done(ulong[] bits, int last) => (this.bits, Last) = (bits, last);

        /// <summary>The one begun last; -1 where none is.</summary>
        public int Last { get; }

        public bool Has(int part) => (bits[part / 64] & (1UL << (part % 64))) != 0;

        /// <summary>Up to that one, where one comes after another.</summary>
        public Done Until(int part) => new(bits, part);

        public Done With(int part)
        {
            var more = (ulong[])bits.Clone();
            more[part / 64] |= 1UL << (part % 64);
            return new(more, part);
        }
    }
}
