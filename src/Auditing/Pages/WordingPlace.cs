using System.Collections;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A part of the page that is begun, and what of it is done.</summary>
internal sealed class WordingPlace
{
    private readonly Series<Wording> parts;
    private readonly Wording whole;

    /// <summary>Which parts are begun or done, where they may come in any order; null where none is.</summary>
    private readonly BitArray? done;

    /// <summary>The place and the number of the part of it that this one is; what comes behind it is worked out when
    /// needed.</summary>
    private readonly (WordingPlace Place, int Part)? within;

    private WordingPlace? up;

    private WordingPlace(
        Wording whole,
        BitArray? done,
        int first,
        (WordingPlace Place, int Part)? within,
        WordingPlace? up = null
    )
    {
        (this.whole, this.done, First, this.within, this.up) = (whole, done, first, within, up);
        parts = whole switch
        {
            Wording.InOrder order => order.Parts,
            Wording.InAnyOrder any => any.Parts,
            _ => throw new NotSupportedException(whole.GetType().Name),
        };
    }

    public bool IsInOrder => whole is Wording.InOrder;

    /// <summary>The first part that may come yet.</summary>
    public int First { get; }

    public int Count => parts.Count;

    public Wording this[int part] => parts[part];

    /// <summary>The part that it belongs to, behind this one; null where it is the whole page.</summary>
    public WordingPlace? Up => up ??= within is { } outer ? outer.Place.Behind(outer.Part) : null;

    public static WordingPlace At(Wording whole) => new(whole, null, 0, null);

    /// <summary>The beginning of a part.</summary>
    public static WordingPlace At(Wording whole, WordingPlace place, int part) => new(whole, null, 0, (place, part));

    /// <summary>Whether a part is begun or done.</summary>
    public bool Has(int part) => done is not null && done[part];

    /// <summary>The same place where that part is done, and those before it, if one comes after another.</summary>
    public WordingPlace Behind(int part)
    {
        if (IsInOrder)
            return new(whole, null, part + 1, within, up);
        return new(whole, new BitArray(done ?? new(parts.Count)) { [part] = true }, 0, within, up);
    }

    /// <summary>The parts that may come yet.</summary>
    public IEnumerable<Wording> Rest()
    {
        for (var part = First; part < parts.Count; part++)
            if (!Has(part))
                yield return parts[part];
    }
}
