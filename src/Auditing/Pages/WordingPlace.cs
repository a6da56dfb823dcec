using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A part of the page that is begun, and what of it is done.</summary>
internal sealed class WordingPlace
{
    private readonly Series<Wording> parts;

    /// <summary>Which parts are begun or done, where they may come in any order; null where none is.</summary>
    private readonly ulong[]? done;

    /// <summary>The place that this one is a part of, and which; what comes behind it is worked out when needed.</summary>
    private readonly WordingPlace? around;
    private readonly int number;

    private WordingPlace? up;

    private WordingPlace(Wording whole, WordingPlace? around, int number)
    {
        (this.around, this.number, IsInOrder) = (around, number, whole is Wording.InOrder);
        parts = whole switch
        {
            Wording.InOrder order => order.Parts,
            Wording.InAnyOrder any => any.Parts,
            _ => throw new NotSupportedException(whole.GetType().Name),
        };
    }

    private WordingPlace(WordingPlace before, ulong[]? done, int first)
    {
        (parts, IsInOrder, around, number, up) = (before.parts, before.IsInOrder, before.around, before.number, before.up);
        (this.done, First) = (done, first);
    }

    public bool IsInOrder { get; }

    /// <summary>The first part that may come yet.</summary>
    public int First { get; }

    public int Count => parts.Count;

    public Wording this[int part] => parts[part];

    /// <summary>The part that it belongs to, behind this one; null where it is the whole page.</summary>
    public WordingPlace? Up => up ??= around?.Behind(number);

    public static WordingPlace At(Wording whole) => new(whole, null, 0);

    /// <summary>The beginning of a part.</summary>
    public static WordingPlace At(Wording whole, WordingPlace place, int part) => new(whole, place, part);

    /// <summary>Whether a part is begun or done.</summary>
    public bool Has(int part) => done is not null && (done[part / 64] & (1UL << (part % 64))) != 0;

    /// <summary>The same place where that part is done, and those before it, if one comes after another.</summary>
    public WordingPlace Behind(int part)
    {
        if (IsInOrder)
            return new(this, null, part + 1);
        var more = done is null ? new ulong[(parts.Count + 63) / 64] : (ulong[])done.Clone();
        more[part / 64] |= 1UL << (part % 64);
        return new(this, more, 0);
    }

    /// <summary>The parts that may come yet.</summary>
    public IEnumerable<Wording> Rest()
    {
        for (var part = First; part < parts.Count; part++)
            if (!Has(part))
                yield return parts[part];
    }
}
