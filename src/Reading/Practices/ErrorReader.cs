using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A published error of measuring, in the motions that come with Gradus.</summary>
internal static class ErrorReader
{
    private static readonly (string, ErrorLevel)[] Levels =
    [
        ("95", ErrorLevel.NinetyFive),
        ("90", ErrorLevel.Ninety),
        ("not stated", ErrorLevel.NotStated),
    ];

    private static readonly (string, Served<RangeMode>)[] Modes =
    [
        ("active", new(RangeMode.Active)),
        ("passive", new(RangeMode.Passive)),
        ("either", new(null)),
    ];

    private static readonly (string, Served<RaterRelation>)[] Raters =
    [
        ("one", new(RaterRelation.One)),
        ("two", new(RaterRelation.Two)),
        ("either", new(null)),
    ];

    private static readonly (string, InstrumentClass)[] InstrumentClasses =
    [
        ("goniometer", InstrumentClass.Goniometer),
        ("inclinometer", InstrumentClass.Inclinometer),
        ("tape", InstrumentClass.Tape),
        ("not stated", InstrumentClass.NotStated),
    ];

    private static readonly (string, ErrorService)[] Services =
    [
        ("between-days", ErrorService.BetweenDays),
        ("change-of-sides", ErrorService.ChangeOfSides),
        ("only-shown", ErrorService.OnlyShown),
    ];

    public static MeasuringError? Read(Fields fields)
    {
        var value = fields.NeedNumber("mdc");
        var level = fields.NeedChoice("level", Levels);
        var mode = fields.NeedChoice("mode", Modes);
        var instrument = fields.NeedChoice("instrument", InstrumentClasses);
        var raters = fields.NeedChoice("raters", Raters);
        var trials = fields.NeedWhole("trials", 1, 10);
        var serves = fields.NeedChoice("serves", Services);
        var (of, source, mark) = (fields.NeedText("of"), fields.NeedText("source"), fields.NeedText("mark"));
        fields.Done();
        return
            value is null
            || level is null
            || mode is null
            || instrument is null
            || raters is null
            || trials is null
            || serves is null
            || of is null
            || source is null
            || mark is null
            ? null
            : new(
                value.Value,
                level.Value,
                mode.Value.Only,
                instrument.Value,
                raters.Value.Only,
                trials.Value,
                serves.Value,
                of,
                source,
                mark
            );
    }

    /// <param name="Only">Null where it serves all.</param>
    private readonly record struct Served<T>(T? Only)
        where T : struct;
}
