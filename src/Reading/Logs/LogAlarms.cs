using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Signs that cannot wait in what is not taken: a slip of the pen elsewhere in the line must not hide them.</summary>
internal static partial class LogAlarms
{
    private static readonly StopReason[] SameDay =
    [
        StopReason.Numb,
        StopReason.GivingWay,
        StopReason.Snap,
        StopReason.Swollen,
        StopReason.NoWeight,
    ];

    [GeneratedRegex(@"[a-z][a-z-]*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    /// <summary>The first cell that is such a sign by itself, or pain in the chest; null where there is none.</summary>
    public static string? In(IEnumerable<string> cells) =>
        cells.Select(c => c.Trim().ToLowerInvariant()).FirstOrDefault(c => IsSign(c) || IsOfTheChest(c))
        ?? cells.Select(c => NoteAlarms.In(c, [])).FirstOrDefault(sign => sign is not null);

    /// <summary>The first word of a message's line that is one.</summary>
    public static string? InLine(string line) =>
        Word().Matches(line).Select(m => m.Value.ToLowerInvariant()).FirstOrDefault(IsSign) ?? NoteAlarms.In(line, []);

    private static bool IsSign(string word) =>
        LogWords<RedFlag>.Of(word) is not null || (LogWords<StopReason>.Of(word) is { } why && SameDay.Contains(why));

    private static bool IsOfTheChest(string cell) => cell.EndsWith(" chest", StringComparison.Ordinal) && !cell.StartsWith('0');
}
