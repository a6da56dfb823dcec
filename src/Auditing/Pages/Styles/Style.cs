namespace Gradus.Auditing;

/// <summary>How one element looks on one screen: what its own declarations and those around it come to.</summary>
internal sealed class Style
{
    /// <summary>What says something about a value in other words.</summary>
    private static readonly Dictionary<string, string[]> Longer = new(StringComparer.Ordinal)
    {
        ["background"] = ["background-color", "background-image"],
        ["font"] = ["font-size", "font-weight", "line-height"],
        ["padding"] = ["padding-top", "padding-bottom"],
        ["padding-block"] = ["padding-top", "padding-bottom"],
        ["padding-block-start"] = ["padding-top"],
        ["padding-block-end"] = ["padding-bottom"],
        ["border"] = ["border-top-width", "border-bottom-width"],
        ["border-width"] = ["border-top-width", "border-bottom-width"],
        ["border-block"] = ["border-top-width", "border-bottom-width"],
        ["border-block-width"] = ["border-top-width", "border-bottom-width"],
        ["border-top"] = ["border-top-width"],
        ["border-bottom"] = ["border-bottom-width"],
        ["block-size"] = ["height"],
        ["min-block-size"] = ["min-height"],
        ["max-block-size"] = ["max-height"],
        ["inline-size"] = ["width"],
        ["min-inline-size"] = ["min-width"],
        ["max-inline-size"] = ["max-width"],
    };

    private readonly Style? around;
    private readonly Style root;
    private readonly Dictionary<string, string> variables = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Name, string Value)> said = new(StringComparer.Ordinal);
    private readonly Screen screen;

    /// <param name="around">That of the element it stands in; null for the whole page.</param>
    /// <param name="declared">The weakest first.</param>
    /// <param name="scheme">What the page says of light and dark, where no style does.</param>
    public Style(Style? around, Screen screen, IEnumerable<StylePart.Declared> declared, string scheme)
    {
        this.around = around;
        this.screen = screen;
        root = around?.root ?? this;
        foreach (var one in declared)
            Put(one.Name, one.Value);
        Scheme = Said("color-scheme") ?? around?.Scheme ?? scheme;
        Size = SizeOf(Said("font-size"));
        Weight = WeightOf(Said("font-weight"));
        Colour = Inherited("color", around?.Colour ?? Colour.Black, around?.OpenColour, out var openColour);
        OpenColour = openColour;
        var openLetters = OpenColour;
        Letters = IsFilled
            ? Inherited(
                "-webkit-text-fill-color",
                around?.IsFilled == true ? around.Letters : Colour,
                OpenColour,
                out openLetters
            )
            : Colour;
        OwnGround = GroundOf(Said("background-color"), out var openGround);
        Line = LineOf(Said("line-height"));
        IsGone = Said("display") == "none";
        Fade = Length.Read((Said("opacity") ?? "1").TrimEnd('%') + "px", 16, 16) is { } part
            ? Math.Clamp((Said("opacity") ?? "").EndsWith('%') ? part / 100 : part, 0, 1)
            : 1;
        var picture =
            Said("background-image") is { } image
            && (
                image.Contains("url(", StringComparison.Ordinal)
                || image.Contains("gradient(", StringComparison.Ordinal)
                || image.Contains("image", StringComparison.Ordinal)
            )
                ? image
                : null;
        OpenGround = picture ?? openGround ?? (OwnGround.Alpha >= 1 ? null : around?.OpenGround);
        Open = openLetters ?? OpenGround;
        Below = around?.Ground ?? new ColourReader(IsDark, Colour.Black).Read("canvas") ?? default;
        Ground = OwnGround.Over(Below);
    }

    /// <summary>CSS pixels.</summary>
    public double Size { get; }

    /// <summary>100 to 900.</summary>
    public double Weight { get; }

    /// <summary>The height of a line in CSS pixels; null where only the browser knows it.</summary>
    public double? Line { get; }

    /// <summary>Whether it is taken out of the page.</summary>
    public bool IsGone { get; }

    /// <summary>Whether it stands in a line beside others, and so is no taller than its letters and its own edges.</summary>
    public bool IsInLine =>
        Said("display") == "inline" && around?.Said("display") is not ("flex" or "inline-flex" or "grid" or "inline-grid");

    /// <summary>How much is seen of it, from 0 to 1.</summary>
    public double Fade { get; }

    public Colour Colour { get; }

    public Colour OwnGround { get; }

    /// <summary>What is painted under its own ground.</summary>
    public Colour Below { get; }

    /// <summary>What its text stands on.</summary>
    public Colour Ground { get; }

    /// <summary>What cannot be worked out of its letters or of what they stand on, as the style says it; null where everything is
    /// known.</summary>
    public string? Open { get; }

    private string? OpenColour { get; }

    private string? OpenGround { get; }

    private Colour Letters { get; }

    /// <summary>Whether letters are painted in another colour than 'color' says, here or further out.</summary>
    private bool IsFilled => Said("-webkit-text-fill-color") is not null || around?.IsFilled == true;

    private string Scheme { get; }

    private bool IsDark => screen.IsDark && Scheme.Split(' ').Contains("dark");

    /// <summary>Its letters and what they stand on, as they are seen: where something is faded, what is behind shines through
    /// both.</summary>
    public (Colour Text, Colour Ground) Pair()
    {
        var (text, ground) = (Letters.Over(Ground), Ground);
        for (var faded = this; faded is not null; faded = faded.around)
        {
            if (faded.Fade >= 1)
                continue;
            text = (text with { Alpha = faded.Fade }).Over(faded.Below);
            ground = (ground with { Alpha = faded.Fade }).Over(faded.Below);
        }

        return (text, ground);
    }

    /// <summary>A value of its own, variables filled in; null where nothing says it.</summary>
    public string? Said(string name)
    {
        if (!said.TryGetValue(name, out var own) || StyleValue.Filled(own.Value, Variable) is not { } value)
            return null;
        return own.Name == name ? value.Trim() : StyleShorthand.Part(own.Name, value.Trim(), name);
    }

    /// <summary>A length of its own in CSS pixels; null where nothing says it, or only the browser knows it.</summary>
    public double? Pixels(string name) => Said(name) is { } value ? Length.Read(value, Size, root.Size) : null;

    private string? Variable(string name) => Variable(name, 0);

    /// <summary>A variable is filled in where it is written, and passed on so; one that rests on itself is not there.</summary>
    private string? Variable(string name, int depth) =>
        variables.TryGetValue(name, out var value)
            ? depth > 20
                ? null
                : StyleValue.Filled(value, inner => Variable(inner, depth + 1))
            : around?.Variable(name, depth);

    private void Put(string name, string value)
    {
        if (name.StartsWith("--", StringComparison.Ordinal))
            variables[name] = value;
        else if (Longer.TryGetValue(name, out var parts))
            foreach (var part in parts)
                said[part] = (Longer[name] is [_] && !name.StartsWith("border-", StringComparison.Ordinal) ? part : name, value);
        else
            said[name] = (name, value);
    }

    /// <param name="open">What is said and cannot be worked out.</param>
    private Colour Inherited(string name, Colour outer, string? outerOpen, out string? open)
    {
        open = outerOpen;
        var value = Said(name);
        if (value is null || value.ToLowerInvariant() is "inherit" or "unset" or "revert" or "revert-layer")
            return outer;
        var read = new ColourReader(IsDark, name == "color" ? outer : Colour).Read(
            value.Equals("initial", StringComparison.OrdinalIgnoreCase)
                ? name == "color"
                    ? "canvastext"
                    : "currentcolor"
                : value
        );
        open =
            read is null ? value
            : value.Equals("currentcolor", StringComparison.OrdinalIgnoreCase) ? outerOpen
            : null;
        return read ?? outer;
    }

    private Colour GroundOf(string? value, out string? open)
    {
        open = null;
        if (value is null || value.ToLowerInvariant() is "initial" or "unset" or "revert" or "revert-layer" or "none" or "")
            return default;
        if (value.Equals("inherit", StringComparison.OrdinalIgnoreCase))
            return around?.OwnGround ?? default;
        var read = new ColourReader(IsDark, Colour).Read(value);
        open = read is null ? value : null;
        return read ?? default;
    }

    private double SizeOf(string? value)
    {
        var outer = around?.Size ?? 16;
        return value?.ToLowerInvariant() switch
        {
            null or "inherit" or "unset" => outer,
            "smaller" => outer / 1.2,
            "larger" => outer * 1.2,
            "xx-small" => 9,
            "x-small" => 10,
            "small" => 13,
            "medium" or "initial" => 16,
            "large" => 18,
            "x-large" => 24,
            "xx-large" => 32,
            var said when said.EndsWith('%') && Length.Read(said[..^1] + "px", 16, 16) is { } percent => outer * percent / 100,
            var said => Length.Read(said, outer, around is null ? 16 : root.Size) ?? Math.Min(outer, 16),
        };
    }

    private double WeightOf(string? value)
    {
        var outer = around?.Weight ?? 400;
        return value?.ToLowerInvariant() switch
        {
            null or "inherit" or "unset" => outer,
            "normal" or "initial" => 400,
            "bold" => 700,
            "bolder" => outer < 350 ? 400
            : outer < 550 ? 700
            : 900,
            "lighter" => outer < 550 ? 100
            : outer < 750 ? 400
            : 700,
            var said => Length.Read(said + "px", 16, 16) ?? outer,
        };
    }

    /// <summary>A bare number is a part of each element's own size; everything else is passed on as it comes out.</summary>
    private double? LineOf(string? value)
    {
        var own = value is null or "inherit" or "unset" ? null : value;
        LineFactor =
            own is null ? around?.LineFactor
            : own == "normal" ? null
            : Length.Read(own.TrimEnd('%') + "px", 16, 16) is { } number && double.IsFinite(number)
                ? (own.EndsWith('%') ? null : number)
            : null;
        if (LineFactor is { } factor)
            return factor * Size;
        if (own is null)
            return around?.Line is { } passed && around.LineFactor is null ? passed : null;
        return own.EndsWith('%') && Length.Read(own[..^1] + "px", 16, 16) is { } percent
            ? percent / 100 * Size
            : Length.Read(own, Size, root.Size);
    }

    private double? LineFactor { get; set; }
}
