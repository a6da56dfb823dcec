namespace Gradus.Domain;

/// <summary>How small and how large the numbers of a dose may be; all ends included.</summary>
public static class DoseBounds
{
    /// <summary>Sets, repetitions, breaths, rounds of a group, reps, sets of <c>plus</c>.</summary>
    public static readonly Count Counts = new(1, 100);

    public static readonly Count Metres = new(1, 3600);

    /// <summary>Spans of work in seconds: 1 s to 60 min.</summary>
    public static readonly Count Spans = new(1, 3600);

    /// <summary>Rest, pause and switch in seconds: 0 s to 15 min.</summary>
    public static readonly Count Rests = new(0, 900);

    public static readonly Count Percents = new(1, 100);

    /// <summary>The felt effort.</summary>
    public static readonly Count Ratings = new(0, 10);

    public static readonly Count RampSteps = new(2, 20);

    /// <summary>Good repetitions left undone.</summary>
    public static readonly Count Leave = new(0, 100);

    /// <summary>A whole dose: 4 h, at its high end.</summary>
    public static readonly Seconds Longest = new(4 * 60 * 60);

    /// <summary>Whether the dose takes longer than 4 h at its high end. A line that was read is not; a dose that inherited its
    /// rest or had its side replaced may be.</summary>
    public static bool IsTooLong(Dose dose, DoseSettings settings) => Timeline.IsTooLong(dose.High().Settled(), settings);

    internal static Count Checked(Count value, Count bounds, string name) =>
        bounds.Holds(value) ? value : throw new ArgumentOutOfRangeException(name, $"{value} is not within {bounds}.");

    internal static int Checked(int value, Count bounds, string name) => Checked(new Count(value), bounds, name).Low;

    internal static Seconds? Checked(Seconds? value, Count bounds, string name) =>
        value is { } seconds ? new Seconds(Checked(seconds.Value, bounds, name)) : null;

    /// <summary>The text of a term: not empty, no comma, single spaces, every character can be shown.</summary>
    internal static string CheckedText(string text, string name) =>
        text.Length > 0 && text == Spacing.Collapse(text) && !text.Contains(',') && Characters.CanBeShown(text)
            ? text
            : throw new ArgumentException($"'{text}' is no text of a term.", name);
}
