using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>A range that an exercise needs, on one side that a use works.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Reading">The latest that there is, active or passive; null where it was never measured.</param>
internal sealed record NeededSide(Use Use, NeededRange Range, Motion Motion, Side? Side, RangeReading? Reading)
{
    /// <summary>As a reading of the motion is called: "right ankle dorsiflexion".</summary>
    public string Name => Side is { } side ? $"{side.Word()} {Motion.Name}" : Motion.Name;

    /// <summary>"90 deg", as readings.csv has it.</summary>
    public string InUnit(decimal value) =>
        FormattableString.Invariant($"{value} {(Motion.Unit == MotionUnit.Centimetres ? "cm" : "deg")}");

    /// <summary>All of them, in the order of the uses. A use that is done in no week needs nothing.</summary>
    /// <param name="today">A reading of a later day does not count yet.</param>
    public static IEnumerable<NeededSide> Of(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        where use.Weeks.Count > 0
        from range in practice.Of(use.Exercise.Id).Needs
        let motion = practice.Measures.First(m => m.Motion.Name == range.Motion).Motion
        from side in motion.IsPaired ? use.Sides.Order().Select(s => (Side?)s) : [null]
        select new NeededSide(use, range, motion, side, Latest(client, motion, side, today));

    /// <summary>Of one day the smallest, which is the one that it is safe to build on.</summary>
    private static RangeReading? Latest(Client client, Motion motion, Side? side, DateOnly today) =>
        client
            .Readings.Where(r => r.Motion.Name == motion.Name && r.Side == side && r.Date <= today)
            .OrderByDescending(r => r.Date)
            .ThenBy(r => r.Value)
            .FirstOrDefault();
}
