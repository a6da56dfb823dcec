namespace Gradus.Auditing;

/// <summary>What a stylesheet is made of, all of it: what is malformed is a part too.</summary>
/// <param name="From">Where it begins, in UTF-16 units.</param>
/// <param name="Until">Behind its end.</param>
internal abstract record CssPart(int From, int Until)
{
    /// <param name="Head">The tokens of its selectors, without comments.</param>
    public sealed record Rule(int From, int Until, IReadOnlyList<CssToken> Head, IReadOnlyList<CssPart> Inside)
        : CssPart(From, Until);

    /// <param name="Name">As it is written, without the sign before it.</param>
    /// <param name="Inside">Null for one that has no block.</param>
    public sealed record AtRule(int From, int Until, string Name, IReadOnlyList<CssToken> Head, IReadOnlyList<CssPart>? Inside)
        : CssPart(From, Until);

    /// <param name="Name">As it is written.</param>
    /// <param name="Value">Without comments, without blanks at its ends and without what makes it important.</param>
    public sealed record Declared(int From, int Until, string Name, IReadOnlyList<CssToken> Value, bool IsImportant)
        : CssPart(From, Until);

    /// <param name="Why">As the end of a sentence: "a block that nothing closes".</param>
    public sealed record Unread(int From, int Until, string Why) : CssPart(From, Until);
}
