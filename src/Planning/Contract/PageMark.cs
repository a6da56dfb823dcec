using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What an element tells the scripts of the text in it: which button it is, which answer, which panel, when it is shown.
/// A text with the wrong mark is as wrong as a wrong text: "No" that means yes.</summary>
public static class PageMark
{
    /// <summary>The attributes that make a mark, in the order in which it has them.</summary>
    public static readonly Series<string> Attributes =
    [
        "data-act",
        "data-alarm",
        "data-skip",
        "data-because",
        PageData.Panel,
        "data-say",
        "data-why",
        "data-choose-week",
        "data-week-now",
        "data-log",
        "data-do",
        "data-undo",
        "data-all-weeks",
        "data-lead-in",
        "data-lead-none",
        "data-lead-past",
        "data-lead-unread",
        PageData.Asks,
        PageData.Later,
        PageData.WeekNew,
        PageData.OnPause,
        PageData.DaysDone,
        PageData.ListDone,
        PageData.LastWeek,
        PageData.Others,
        PageData.Go,
        "data-print",
        "data-nothing-today",
        "data-without-scripts",
        "data-good-until",
    ];

    /// <summary>"act=alarm alarm=chest"; an attribute without a value has its name alone.</summary>
    public static string Of(params ReadOnlySpan<(string Name, string Value)> marks)
    {
        var said = new List<string>();
        foreach (var (name, value) in marks)
            said.Add(value.Length > 0 ? $"{Bare(name)}={value}" : Bare(name));
        return string.Join(' ', said);
    }

    /// <summary>Of a cell as wide as that many columns: whatever stands behind it in its row is moved by them.</summary>
    public static string Cell(int columns) => columns > 1 ? Of(("colspan", FormattableString.Invariant($"{columns}"))) : "";

    /// <summary>Whether a text that the plan marks so is there for everybody: the mark tells the guided session which item a step
    /// asks for, and no script hides by it.</summary>
    public static bool LeavesShown(string mark) =>
        mark.Length == 0 || mark.StartsWith(Bare(PageData.Asks) + "=", StringComparison.Ordinal);

    private static string Bare(string name) => name.StartsWith("data-", StringComparison.Ordinal) ? name["data-".Length..] : name;
}
