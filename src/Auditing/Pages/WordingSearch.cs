using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Goes through every text that may come next behind a place, the nearest first, and keeps those that make up a line
/// whole. It makes a place only where a text fits: most of what may come next does not.</summary>
/// <remarks>One serves for all lines of a page, one after another.</remarks>
internal sealed class WordingSearch
{
    /// <summary>What may stand between two texts in a line.</summary>
    private const string Between = " ·:,;.–—-|/()\u00a0";

    /// <summary>In how many places of the plan a text is looked for.</summary>
    private const int Compared = 8;

    private readonly List<WordingStep[]> found = [];
    private readonly List<WordingStep> steps = [];
    private string line = "";
    private string mark = "";

    /// <summary>How many needed texts are passed over at most.</summary>
    private int allowance;

    /// <summary>After how many ways it is enough.</summary>
    private int most;

    /// <summary>The ways to make up a line, from that place on; until the next question.</summary>
    public IReadOnlyList<WordingStep[]> Several(TextLine asked, WordingPlace from, int passing) =>
        Ways(asked, from, passing, Compared);

    /// <summary>The first of them that passes over nothing that is needed; null where there is none.</summary>
    public WordingStep[]? First(TextLine asked, WordingPlace from) => Ways(asked, from, 0, 1) is [var way] ? way : null;

    private List<WordingStep[]> Ways(TextLine asked, WordingPlace from, int passing, int enough)
    {
        (line, mark, allowance, most) = (asked.Text, asked.Mark, passing, enough);
        found.Clear();
        Behind(from, 0);
        return found;
    }

    /// <summary>Tries every text that may come next, and so does each of the others here.</summary>
    /// <param name="at">From where in the line on.</param>
    /// <returns>Whether it is enough.</returns>
    private bool Behind(WordingPlace from, int at)
    {
        var passed = PassedWording.Nothing;
        var begins = Wording.BeginningsOf(line.AsSpan(at));
        for (var place = from; place is not null; place = place.Up)
        {
            if (Inside(place, at, begins, passed))
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
    /// <param name="begins">How the line may begin there.</param>
    private bool Inside(WordingPlace place, int at, ulong begins, PassedWording before)
    {
        var passed = before;
        for (var part = place.First; part < place.Count; part++)
        {
            if (place.Has(part))
                continue;
            if ((place[part].Beginnings & begins) != 0 && Into(place[part], place, part, at, begins, passed))
                return true;
            if (!place.IsInOrder)
                continue;
            if (passed.Needed + place[part].Needed > allowance)
                return false;
            passed = passed.With(place[part]);
        }

        return false;
    }

    private bool Into(Wording wording, WordingPlace place, int part, int at, ulong begins, PassedWording passed) =>
        wording switch
        {
            Wording.Line text => text.Mark == mark && Fits(text, place, part, at, passed),
            Wording.Optional optional => Into(optional.Part, place, part, at, begins, passed),
            _ => Inside(WordingPlace.At(wording, place, part), at, begins, passed),
        };

    private bool Fits(Wording.Line text, WordingPlace place, int part, int at, PassedWording passed)
    {
        for (var way = 0; way < text.Texts.Count; way++)
        {
            if (!Stands(text.Texts[way], at))
                continue;
            var end = at + text.Texts[way].Length;
            while (end < line.Length && Between.Contains(line[end], StringComparison.Ordinal))
                end++;
            var after = place.Behind(part);
            steps.Add(new(text, after, passed));
            if (end == line.Length)
                found.Add([.. steps]);
            else
                Behind(after, end);
            steps.RemoveAt(steps.Count - 1);
            if (found.Count == most)
                return true;
        }

        return false;
    }

    /// <summary>Whether the text stands there in the line, not torn out of a longer word.</summary>
    private bool Stands(string text, int at)
    {
        var end = at + text.Length;
        return line.AsSpan(at).StartsWith(text, StringComparison.Ordinal)
            && (end == line.Length || !char.IsLetterOrDigit(line[end - 1]) || !char.IsLetterOrDigit(line[end]));
    }
}

/// <summary>One text of the plan in a line.</summary>
/// <param name="After">Where it goes on.</param>
internal readonly record struct WordingStep(Wording.Line Text, WordingPlace After, PassedWording Passed);

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
