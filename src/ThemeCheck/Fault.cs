namespace Gradus.ThemeCheck;

/// <summary>One thing that somebody who looks at a page does not see as it should be seen.</summary>
/// <param name="Client">Whose page it is.</param>
/// <param name="Line">The line of the plan that it is about; empty where it is about the page.</param>
/// <param name="What">What is wrong, a sentence.</param>
internal sealed record Fault(string Client, string Page, Sight Sight, string Line, string What)
{
    /// <summary>Longer lines are known by their beginning.</summary>
    private const int Known = 60;

    private const int Named = 3;

    /// <summary>Each cause once, with the first of the sights in which it is.</summary>
    public static IEnumerable<string> Said(IEnumerable<Fault> faults) =>
        faults
            .GroupBy(f => (f.Client, f.Page, f.Line, f.What))
            .Select(cause =>
            {
                var sights = cause.Select(f => f.Sight.ToString()).Distinct().ToArray();
                var more = sights.Length > Named ? FormattableString.Invariant($"; and {sights.Length - Named} more") : "";
                var line = cause.Key.Line.Length > Known ? cause.Key.Line[..Known] + "…" : cause.Key.Line;
                return $"{cause.Key.Client}/{cause.Key.Page} ({string.Join("; ", sights.Take(Named))}{more}): "
                    + $"{(line.Length > 0 ? $"'{line}': " : "")}{cause.Key.What}";
            });
}
