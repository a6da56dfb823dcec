using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What an error of measuring was found for, in words.</summary>
internal static class RangeErrorText
{
    /// <summary>"90 per cent, active, inclinometer, two raters, mean of 2, between days".</summary>
    public static string ConditionsOf(MeasuringError error) =>
        string.Join(
            ", ",
            [
                error.Level switch
                {
                    ErrorLevel.NinetyFive => "95 per cent",
                    ErrorLevel.Ninety => "90 per cent",
                    ErrorLevel.NotStated => "level not stated",
                },
                error.Mode is { } mode ? WordOf(mode) : "active or passive",
                error.Instrument switch
                {
                    InstrumentClass.Any => "any instrument",
                    InstrumentClass.NotStated => "instrument not stated",
                    _ => error.Instrument.ToString().ToLowerInvariant(),
                },
                error.Raters switch
                {
                    RaterRelation.One => "one rater",
                    RaterRelation.Two => "two raters",
                    _ => "one rater or two",
                },
                TriesOf(error.Trials),
                error.Serves switch
                {
                    ErrorService.BetweenDays => "between days",
                    ErrorService.ChangeOfSides => "change of the difference of the sides",
                    ErrorService.OnlyShown => "only shown",
                },
            ]
        );

    /// <summary>Where the error that a comparison is judged by comes from: "Powden CJ 2015, …; level not stated, …".</summary>
    public static string SourceOf(ErrorInUse error)
    {
        var raters = error.Raters == RaterRelation.One ? "one rater" : "two raters, or not said who measured";
        var source =
            error.Own is { } own
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"this practice's own, from {own.Pairs} pairs of readings; {raters}"
                )
            : error.Home is { } home
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"provisional: the client's own scatter over {home.Days} days at home, at least 2 cm; common practice, no "
                        + $"source"
                )
            : error.Published is { } published ? $"{published.Source}; {ConditionsOf(published)}; {published.Note}"
            : "";
        var computed =
            (error.Published?.Level == ErrorLevel.Ninety ? "; turned from 90 into 95 per cent, computed" : "")
            + (
                error.IsForFewerTrials
                    ? string.Create(
                        CultureInfo.InvariantCulture,
                        $"; made larger because {TriesHere(error.Trials)} was taken and not {error.TrialsThere}, computed"
                    )
                    : ""
            );
        return source + computed;
    }

    public static string WordOf(RaterRelation raters) => raters == RaterRelation.One ? "one rater" : "two raters";

    public static string WordOf(RangeMode mode) => mode == RangeMode.Active ? "active" : "passive";

    private static string TriesHere(int trials) =>
        trials == 1 ? "one try" : string.Create(CultureInfo.InvariantCulture, $"the mean of {trials}");

    private static string TriesOf(int trials) =>
        trials == 1 ? "one try" : string.Create(CultureInfo.InvariantCulture, $"mean of {trials}");
}
