using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>A range that an exercise needs, on one side that a use works.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Reading">What it is judged by: the latest of the mode that is needed; where none is said, the smaller of the
/// latest of both; null where there is none.</param>
/// <param name="IsOld">Whether that reading is too old to build on.</param>
internal sealed record NeededSide(Use Use, NeededRange Range, Motion Motion, Side? Side, RangeReading? Reading, bool IsOld)
{
    public const int ReadingsLast = RangeMark.ReadingsLast;

    /// <summary>A range that is too small was too small however long ago; one that was enough is unmeasured once it is
    /// old.</summary>
    public bool IsBelow => Reading is not null && Reading.Value < Range.AtLeast;

    public bool IsUnmeasured => Reading is null || (!IsBelow && IsOld);

    /// <summary>As a reading of the motion is called: "right ankle dorsiflexion".</summary>
    public string Name => MeasureTexts.NameOf(Motion, Side);

    /// <summary>"90 deg", as readings.csv has it.</summary>
    public string InUnit(decimal value) => MeasureTexts.InUnit(value, Motion);

    /// <summary>All of them, in the order of the uses. A use that is done in no week needs nothing.</summary>
    /// <param name="today">A reading of a later day does not count yet.</param>
    public static IEnumerable<NeededSide> Of(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        where use.Weeks.Count > 0
        from range in practice.Of(use.Exercise.Id).Needs
        let motion = practice.MeasureOf(range.Motion).Motion
        from side in motion.IsPaired ? use.Sides.Order().Select(s => (Side?)s) : [null]
        let reading = Judged(client, motion, side, range.Mode, today)
        select new NeededSide(
            use,
            range,
            motion,
            side,
            reading,
            reading is not null && RangeMark.IsOld(reading.Date, Judging(client.Programme, today))
        );

    /// <summary>Today, as far as it is a day of the programme.</summary>
    private static DateOnly Judging(Programme programme, DateOnly today) =>
        today < programme.Start ? programme.Start
        : today > programme.End ? programme.End
        : today;

    private static RangeReading? Judged(Client client, Motion motion, Side? side, RangeMode? mode, DateOnly today) =>
        Enum.GetValues<RangeMode>()
            .Where(m => mode is null || m == mode)
            .Select(m => Latest(client, motion, side, m, today))
            .OfType<RangeReading>()
            .MinBy(r => r.Value);

    /// <summary>Of one day the smallest, which is the one that it is safe to build on.</summary>
    private static RangeReading? Latest(Client client, Motion motion, Side? side, RangeMode mode, DateOnly today) =>
        client
            .Readings.Where(r => r.Motion.Name == motion.Name && r.Side == side && r.Mode == mode && r.Date <= today)
            .OrderByDescending(r => r.Date)
            .ThenBy(r => r.Value)
            .FirstOrDefault();
}
