using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Goes through every text that may come next behind a place, the nearest first, and keeps those that make up a line
/// whole. It makes a place only where a text fits: most of what may come next does not.</summary>
/// <param name="allowance">How many needed texts are passed over at most.</param>
/// <param name="most">After how many ways it is enough.</param>
internal sealed class WordingSearch(TextLine line, int allowance, int most)
{
    /// <summary>What may stand between two texts in a line.</summary>
    private const string Between = " ·:,;.–—-|/()\u00a0";

    /// <summary>In how many places of the plan a text is looked for.</summary>
    private const int Compared = 8;

    private readonly List<Series<WordingStep>> found = [];
    private readonly Stack<WordingStep> steps = new();

    /// <summary>The ways to make up a line, from that place on.</summary>
    public static IReadOnlyList<Series<WordingStep>> Several(TextLine line, WordingPlace from, int allowance) =>
        new WordingSearch(line, allowance, Compared).Ways(from);

    /// <summary>The first of them that passes over nothing that is needed; null where there is none.</summary>
    public static Series<WordingStep>? First(TextLine line, WordingPlace from) =>
        new WordingSearch(line, 0, 1).Ways(from) is [var way] ? way : null;

    private List<Series<WordingStep>> Ways(WordingPlace from)
    {
        Behind(from, 0);
        return found;
    }

    /// <summary>Tries every text that may come next, and so does each of the others here.</summary>
    /// <param name="at">From where in the line on.</param>
    /// <returns>Whether it is enough.</returns>
    private bool Behind(WordingPlace from, int at)
    {
        var passed = PassedWording.Nothing;
        for (var place = from; place is not null; place = place.Up)
        {
            if (Inside(place, at, passed))
                return true;
            for (var part = place.First; part < place.Count; part++)
            {
                if (place.Has(part))
                    continue;
                if (passed.Needed + place[part].Needed > allowance)
                    return false;
                passed = passed.With(place[part]);
            }
        }

        return false;
    }

    /// <summary>The texts of what is left of a place.</summary>
    private bool Inside(WordingPlace place, int at, PassedWording before)
    {
        var passed = before;
        for (var part = place.First; part < place.Count; part++)
        {
            if (place.Has(part))
                continue;
            if (Into(place[part], place, part, at, passed))
                return true;
            if (!place.IsInOrder)
                continue;
            if (passed.Needed + place[part].Needed > allowance)
                return false;
            passed = passed.With(place[part]);
        }

        return false;
    }

    private bool Into(Wording wording, WordingPlace place, int part, int at, PassedWording passed) =>
        wording switch
        {
            Wording.Line text => text.Mark == line.Mark && Fits(text, place, part, at, passed),
            Wording.Optional optional => Into(optional.Part, place, part, at, passed),
            _ => Inside(WordingPlace.At(wording, place, part), at, passed),
        };

    private bool Fits(Wording.Line text, WordingPlace place, int part, int at, PassedWording passed)
    {
        for (var way = 0; way < text.Texts.Count; way++)
        {
            if (!Stands(text.Texts[way], at))
                continue;
            var end = at + text.Texts[way].Length;
            while (end < line.Text.Length && Between.Contains(line.Text[end], StringComparison.Ordinal))
                end++;
            var after = place.Behind(part);
            steps.Push(new(text, after, passed));
            if (end == line.Text.Length)
                found.Add(steps.Reverse().ToSeries());
            else
                Behind(after, end);
            steps.Pop();
            if (found.Count == most)
                return true;
        }

        return false;
    }

    /// <summary>Whether the text stands there in the line, not torn out of a longer word.</summary>
    private bool Stands(string text, int at)
    {
        var end = at + text.Length;
        return line.Text.AsSpan(at).StartsWith(text, StringComparison.Ordinal)
            && (end == line.Text.Length || !char.IsLetterOrDigit(line.Text[end - 1]) || !char.IsLetterOrDigit(line.Text[end]));
    }
}

/// <summary>One text of the plan in a line.</summary>
/// <param name="After">Where it goes on.</param>
internal sealed record WordingStep(Wording.Line Text, WordingPlace After, PassedWording Passed);

/// <summary>What has been passed over, the last first.</summary>
internal sealed record PassedWording(Wording? Part, PassedWording? Before, int Needed)
{
    public static readonly PassedWording Nothing = new(null, null, 0);

    public PassedWording With(Wording part) => part.Needed == 0 ? this : new(part, this, Needed + part.Needed);

    /// <summary>In the order of the plan.</summary>
    public IEnumerable<Wording> InOrder() => All().Reverse();

    private IEnumerable<Wording> All()
    {
        for (var at = this; at is { Part: { } part }; at = at.Before)
            yield return part;
    }
}
