using System.Globalization;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a coach is told where an envelope cannot be walked: never that somebody is behind, nor a way to catch
/// up.</summary>
public static class GrowthSentences
{
    public const string UnfinishedHelp =
        "Nothing has to be reached. Give it more weeks, write lines under by-week, or narrow the exercise's dose.";

    public const string CoarseHelp = "Let what is held or counted begin lower, or begin with the higher number.";

    /// <param name="what">A title in quotation marks, or "this line".</param>
    /// <param name="weeks">Its full weeks.</param>
    /// <param name="need">So many full weeks its high end would take.</param>
    /// <param name="growAtMost">Per cent.</param>
    public static string Unfinished(string what, int weeks, int need, SettledDose first, SettledDose last, int growAtMost) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"In its {weeks} full {(weeks == 1 ? "week" : "weeks")} {what} {Grows(first, last)}, at most {growAtMost} per cent a "
                + $"week; its high end would take {need}."
        );

    /// <param name="percent">Of the step.</param>
    public static string Coarse(SettledDose from, SettledDose to, int percent) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"From '{WorkOf(from)}' to '{WorkOf(to)}' this line has no smaller step than {percent} per cent."
        );

    /// <param name="what">A title in quotation marks, or "this line".</param>
    /// <param name="week">A lighter one.</param>
    public static string Uncut(string what, int week) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Nothing can be taken away from {what} in week {week}, which is a lighter one: its dose is too small."
        );

    private static string Grows(SettledDose first, SettledDose last) =>
        first == last ? $"stays at {WorkOf(first)}" : $"grows from {WorkOf(first)} to {WorkOf(last)}";

    /// <summary>The sets and the work, without the terms that do not grow.</summary>
    private static string WorkOf(SettledDose dose) => (dose.AsDose with { Terms = DoseTerms.None }).ToString();
}
