using Gradus.Domain;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>What a reader asked of the browser or of the system, and gets from a page.</summary>
internal sealed record Look(
    string Name,
    ColorScheme Scheme = ColorScheme.Light,
    Contrast Contrast = Contrast.NoPreference,
    ForcedColors Forced = ForcedColors.None,
    ReducedMotion Motion = ReducedMotion.NoPreference
)
{
    public static readonly Look Light = new("light");

    public static readonly Look Dark = new("dark", ColorScheme.Dark);

    /// <summary>All six.</summary>
    public static readonly Series<Look> All =
    [
        Light,
        Dark,
        new("more contrast", Contrast: Contrast.More),
        new("more contrast in the dark", ColorScheme.Dark, Contrast.More),
        new("forced colours", ColorScheme.Dark, Forced: ForcedColors.Active),
        new("reduced motion", Motion: ReducedMotion.Reduce),
    ];
}

/// <summary>One way in which a page is looked at.</summary>
/// <param name="Width">Of the window, in CSS pixels.</param>
/// <param name="Text">How large letters are, 1 for the size of the theme.</param>
/// <param name="OnPaper">Printed: <paramref name="Width"/> is that of the print on A4.</param>
/// <param name="Axe">Whether axe looks too.</param>
internal sealed record Sight(Look Look, int Width, double Text = 1, bool OnPaper = false, bool Axe = false)
{
    public static readonly Series<int> Widths = [320, 768, 1280];

    /// <summary>A4 with margins of 10 mm.</summary>
    public static readonly Sight Print = new(Look.Light, 718, OnPaper: true);

    /// <summary>Where most can go wrong: what is looked at of pages whose parts are looked at elsewhere already.</summary>
    public static readonly Series<Sight> Few = [new(Look.Light, 320), new(Look.Dark, 1280), Print];

    /// <summary>Every look, large letters on the smallest window, and paper. Looks of one ground share a window,
    /// where most of them are painted alike; three turns have each look at each width.</summary>
    /// <param name="turn">0 to 2: the window of the light looks; the dark ones have the next, forced colours the one
    /// after.</param>
    /// <param name="axe">The look in which axe looks too.</param>
    public static Series<Sight> Turned(int turn, Look axe) =>
        Look
            .All.Select(look => new Sight(look, Widths[(turn + Behind(look)) % Widths.Count], Axe: look == axe))
            .Append(new(Look.Light, Widths[0], 2))
            .Append(Print)
            .ToSeries();

    private static int Behind(Look look) =>
        look.Forced == ForcedColors.Active ? 2
        : look.Scheme == ColorScheme.Dark ? 1
        : 0;

    /// <summary>The size that no letter may be below, in CSS pixels: 0.8 rem on a screen, 8.5 pt on paper.</summary>
    public double SmallestLetters => OnPaper ? 8.5 * 96 / 72 : 12.8 * Text;

    public override string ToString() =>
        OnPaper ? "print"
        : Text > 1 ? FormattableString.Invariant($"{Look.Name}, {Width} px, text {100 * Text:0} %")
        : FormattableString.Invariant($"{Look.Name}, {Width} px");
}
