namespace Gradus.ThemeCheck;

/// <summary>How one word is painted.</summary>
/// <param name="Line">The number of its line among those that are watched.</param>
/// <param name="Part">Whether it is broken over several lines, and this is what of it stands on one.</param>
/// <param name="Size">Of its letters, in CSS pixels, as the styles have it.</param>
/// <param name="Left">Of its box in the window, as the other three.</param>
/// <param name="Hit">What lies over it, in words; empty where nothing does.</param>
internal sealed record Painted(
    int Line,
    string Word,
    bool Part,
    double Size,
    double Left,
    double Top,
    double Right,
    double Bottom,
    string Hit,
    bool Turned
)
{
    /// <summary>WCAG 2.2, 1.4.3, level AA.</summary>
    private const double Contrast = 4.5;

    /// <summary>Of the thin letters of one word less is painted in full colour than of those of a line.</summary>
    private const double ContrastOfAWord = 3;

    private const double Seen = 1.15;

    /// <summary>What is wrong with it where it stands; null where nothing is.</summary>
    /// <param name="smallest">How large its letters must be.</param>
    /// <param name="wide">The window's width.</param>
    public string? Misplaced(double smallest, int wide) =>
        Size < smallest - 0.05 ? FormattableString.Invariant($"its letters have {Size:0.#} px, and need {smallest:0.#}.")
        : Bottom - Top < Size * 0.9 ? "its letters are pressed flat, or made smaller."
        : Left < -1 || Right > wide + 1 || Hit == "outside" ? "it stands outside of what is shown."
        : Turned ? "its letters stand in another order than they are read in."
        : Hit.Length > 0 ? $"it is {Hit}."
        : null;

    /// <summary>What is wrong with how it is painted, and how far it stands out from what is behind it.</summary>
    /// <param name="with">The window as it is, from <paramref name="left"/> and <paramref name="top"/> on.</param>
    /// <param name="without">The same without the letters of the lines that are watched.</param>
    public (string? What, double Contrast) Pale(Pixels with, Pixels without, int left, int top)
    {
        var (best, first, last) = (1.0, int.MaxValue, -1);
        for (var y = Math.Max(0, (int)Top - 1 - top); y < Math.Min(with.Height, (int)Bottom + 2 - top); y++)
        for (var x = Math.Max(0, (int)Left - 1 - left); x < Math.Min(with.Width, (int)Right + 2 - left); x++)
        {
            var ratio = with.Against(without, x, y);
            best = Math.Max(best, ratio);
            if (ratio > Seen)
                (first, last) = (Math.Min(first, y), Math.Max(last, y));
        }

        return (
            last < 0 ? "it is not painted."
            : best < ContrastOfAWord ? Said(best)
            : !Part && Word.Count(char.IsLetterOrDigit) > 2 && last - first + 1 < Size * 0.35
                ? $"only a part of the height of the letters of '{Word}' is painted."
            : null,
            best
        );
    }

    /// <summary>What is wrong where the best word of a line stands out by that much.</summary>
    public static string? PaleLine(double best) => best < Contrast ? Said(best) : null;

    private static string Said(double ratio) =>
        FormattableString.Invariant($"its letters do not stand out from what is behind them: {Math.Floor(ratio * 10) / 10:0.0}")
        + FormattableString.Invariant($" to 1, and {Contrast} is needed.");
}
