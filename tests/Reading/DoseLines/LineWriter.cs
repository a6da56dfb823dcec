namespace Gradus.Tests.Reading;

/// <summary>Writes tokens as a line in one of the many ways the grammar allows.</summary>
internal sealed class LineWriter(Dice dice, HashSet<string> kinds)
{
    private static readonly string[] Gaps = ["  ", "\t", "\u00a0", " \u2009 "];

    private readonly bool isGlued = dice.OneIn(4);
    private readonly bool isTidy = dice.OneIn(3);
    private readonly bool isShouted = dice.OneIn(4);

    public string Write(IReadOnlyList<string> tokens)
    {
        if (isGlued)
            kinds.Add("glued");
        return string.Concat(tokens.Select((token, i) => (i == 0 && isTidy ? "" : Gap()) + Written(token)))
            + (isTidy ? "" : Gap());
    }

    private string Gap()
    {
        if (isGlued)
            return "";
        if (isTidy)
            return " ";
        if (!dice.OneIn(3))
            return dice.Pick("", " ");
        kinds.Add("white space");
        return dice.Pick(Gaps);
    }

    private string Written(string token)
    {
        if (isTidy)
            return token;
        if (token == "x" && dice.OneIn(3))
            return Marked("sign for x", "×");
        if (token == "-" && dice.OneIn(3))
            return Marked("en dash", "–");
        return isShouted && !token.Contains("kg", StringComparison.Ordinal) ? Marked("capitals", Capitals(token)) : token;
    }

    private string Capitals(string token) => string.Concat(token.Select(c => dice.OneIn(2) ? char.ToUpperInvariant(c) : c));

    private string Marked(string kind, string text)
    {
        kinds.Add(kind);
        return text;
    }
}
