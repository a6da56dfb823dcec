namespace Gradus.Auditing;

/// <summary>Where a rule holds: what the at-rules around it ask for, all of it.</summary>
/// <param name="Medium">"screen", "print", or empty for both.</param>
/// <param name="IsWide">On a wide screen or sheet alone, of at least 40 rem.</param>
internal sealed record StyleMedium(string Medium, bool IsWide, bool IsDark, bool IsContrast, bool IsForced, bool IsPlain)
{
    private const double WideRem = 40;
    private const int PixelsOfRem = 16;

    public static readonly StyleMedium All = new("", false, false, false, false, true);

    /// <summary>As it is called in a sentence: "on a dark screen".</summary>
    public string Words =>
        Medium == "print"
            ? "on paper"
            : (IsDark, IsContrast) switch
            {
                (true, true) => "on a dark screen with more contrast",
                (true, false) => "on a dark screen",
                (false, true) => "on a screen with more contrast",
                _ => "on a light screen",
            };

    /// <returns>Null and why, as the end of a sentence, where it asks for something that is not on the list.</returns>
    public StyleMedium? With(string css, IReadOnlyList<CssToken> head, out string why)
    {
        why = "";
        var medium = this with { IsPlain = false };
        var at = 0;
        for (var first = true; at < head.Count; first = false)
        {
            if (!first && !(Word() == "and" && Blank()))
                break;
            if (first && head[at].Kind == CssKind.Ident && css[head[at].From..head[at].Until] is "screen" or "print")
            {
                var name = Word();
                if (Medium.Length > 0 && Medium != name)
                    break;
                medium = medium with { Medium = name };
                Blank();
            }
            else if (Feature() is not { } feature || medium.With(feature) is not { } next)
                break;
            else
            {
                medium = next;
                Blank();
            }

            if (at >= head.Count && !(medium.IsDark && medium.Medium != "screen"))
                return medium;
        }

        why = medium.IsDark && at >= head.Count ? "dark colours that hold on paper too" : "what is asked here";
        return null;

        string Word() => at < head.Count && head[at].Kind == CssKind.Ident ? css[head[at].From..head[at++].Until] : "";

        bool Blank() => at < head.Count && head[at].Kind == CssKind.Blank && at++ >= 0;

        (string Name, StyleTerm Value)? Feature()
        {
            if (at >= head.Count || head[at].Kind != CssKind.OpenRound)
                return null;
            var end = at;
            while (end < head.Count && head[end].Kind != CssKind.CloseRound)
                end++;
            var inside = StyleTerm.Of(css, [.. head.Skip(at + 1).Take(end - at - 1)]);
            at = end + 1;
            return inside is [{ Kind: CssKind.Ident } name, { Kind: CssKind.Colon }, var value] ? (name.Text, value) : null;
        }
    }

    private StyleMedium? With((string Name, StyleTerm Value) feature) =>
        (feature.Name, feature.Value.Text) switch
        {
            ("prefers-color-scheme", "dark") => this with { IsDark = true },
            ("prefers-contrast", "more") => this with { IsContrast = true },
            ("prefers-reduced-motion", "reduce") => this,
            ("forced-colors", "active") => this with { IsForced = true },
            ("max-width", _) when Rem(feature.Value) > 0 => this,
            ("min-width", _) when Rem(feature.Value) is > 0 and var rem => this with { IsWide = IsWide || rem >= WideRem },
            _ => null,
        };

    private static double Rem(StyleTerm value) =>
        value.Measure switch
        {
            (var number, "rem" or "em") => number,
            (var number, "px") => number / PixelsOfRem,
            _ => 0,
        };
}
