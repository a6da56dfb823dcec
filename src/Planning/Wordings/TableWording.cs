using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what each week asks, as figures: the same on the page of a session and on that of an exercise.</summary>
internal static class TableWording
{
    /// <summary>The head: a column for each week of the session.</summary>
    public static Wording Weeks(PlannedSession session, Words words) =>
        Order(Must(words.Say("weeks-column")), Order(session.AllWeeks.Select(w => Must(FormattableString.Invariant($"{w}")))));

    /// <summary>A row for each thing that is counted.</summary>
    public static Wording Rows(PlannedSession session, PlannedUse use) =>
        Order(
            use.Rows.Select(row =>
                Order(session.Cells(row).Select(c => Must(c.Said, PageMark.Cell(c.Weeks), use.Exercise)).Prepend(Must(row.What)))
            )
        );
}
