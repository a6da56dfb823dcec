using Gradus.Domain;

namespace Gradus.Reading;

internal static class SettingsReader
{
    private static readonly (string, AnswersOnPages)[] AnswersShown =
    [
        ("needed", AnswersOnPages.Needed),
        ("all", AnswersOnPages.All),
    ];

    public static PracticeSettings Read(Fields? fields)
    {
        var usual = PracticeSettings.Default;
        if (fields is null)
            return usual;
        var settings = new PracticeSettings(
            new(
                fields.Span("breath", 1) ?? usual.Dose.Breath,
                fields.Span("switch", 0) ?? usual.Dose.Switch,
                fields.Span("repetition", 1) ?? usual.Dose.Repetition,
                Metres() ?? usual.Dose.Carry
            ),
            fields.Span("get-ready", 0) ?? usual.GetReady,
            fields.Span("transition", 0) ?? usual.Transition,
            fields.Span("transition-change", 0) ?? usual.TransitionChange,
            fields.Span("transition-standing", 0) ?? usual.TransitionStanding,
            fields.Percent("lighter-share") ?? usual.LighterShare,
            fields.Percent("grow-at-most") ?? usual.GrowAtMost,
            fields.Percent("large-step", 1000) ?? usual.LargeStep,
            fields.Days("answers-last") ?? usual.AnswersLast,
            fields.Whole("ease-off-above", 0, 10) ?? usual.EaseOffAbove,
            fields.Whole("stop-above", 0, 10) ?? usual.StopAbove,
            fields.Whole("days-back-one-week", 1, 365) ?? usual.DaysBackOneWeek,
            fields.Whole("days-back-to-first", 1, 365) ?? usual.DaysBackToFirst,
            fields.Percent("youth-effort") ?? usual.YouthEffort,
            fields.Whole("youngest", 6, 18) ?? usual.Youngest,
            fields.Whole("reading-grade", 1, 20) ?? usual.ReadingGrade,
            fields.Span("stretch-target", 1) ?? usual.StretchTarget,
            fields.Span("one-position", 60, 120) ?? usual.OnePosition,
            fields.Whole("hard-days-apart", 1, 7) ?? usual.HardDaysApart,
            fields.Choice("answers-on-pages", AnswersShown) ?? usual.AnswersOnPages
        );
        fields.Done();
        if (
            settings.EaseOffAbove > settings.StopAbove
            && (fields.Take("ease-off-above") ?? fields.Take("stop-above")) is { } pain
        )
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                pain.At,
                "Pain would have to be stopped for before it is eased off for.",
                "Let 'ease-off-above' be no more than 'stop-above'."
            );
        return settings;

        Metres? Metres() => fields.Mention("carry") is { } carry ? MetresOf(fields.SourceFile, carry) : null;
    }

    /// <summary>"1 m": the metres walked in a second.</summary>
    private static Metres? MetresOf(SourceFile sheet, Mention<string> written)
    {
        sheet.Note(written, new ValueKind.Pattern("^[1-9] m$", IsOfDigits: false));
        var number = written.Value.EndsWith(" m", StringComparison.Ordinal) ? written.Value[..^2] : "";
        if (number.Length == 1 && char.IsAsciiDigit(number[0]) && number != "0")
            return new(number[0] - '0');
        sheet.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(written.Value)} is no speed for 'carry'.",
            "Write the metres walked in a second, from 1 m to 9 m.",
            written.Value.Length
        );
        return null;
    }
}
