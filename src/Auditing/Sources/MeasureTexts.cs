using Gradus.Domain;

namespace Gradus.Auditing.Sources;

internal static class MeasureTexts
{
    /// <summary>"right ankle dorsiflexion".</summary>
    public static string NameOf(Motion motion, Side? side) => side is { } one ? $"{one.Word()} {motion.Name}" : motion.Name;

    /// <summary>"90 deg", as readings.csv has it.</summary>
    public static string InUnit(decimal value, Motion motion) =>
        FormattableString.Invariant($"{value} {(motion.Unit == MotionUnit.Centimetres ? "cm" : "deg")}");

    public static string WordOf(RangeMode? mode) => mode is { } one ? one.ToString().ToLowerInvariant() : "active or passive";

    /// <summary>How a motion is measured, as a sentence to add behind another; nothing where nobody has written it down. Where
    /// there are several ways they are named.</summary>
    public static string HowToMeasure(this Practice practice, Motion motion) =>
        practice.WaysToMeasure(motion).ToArray() switch
        {
            [{ How: { } how }] => $" Measured so: {how}",
            { Length: > 1 } ways =>
                $" It is measured as {string.Join(" or ", ways.Select(w => w.Motion.Name).Order(StringComparer.Ordinal))}.",
            _ => "",
        };
}
