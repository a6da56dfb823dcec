using Gradus.Domain;

namespace Gradus.Auditing.Sources;

internal static class MeasureTexts
{
    /// <summary>How a motion is measured, as a sentence to add behind another; nothing where nobody has written it
    /// down.</summary>
    public static string HowToMeasure(this Practice practice, Motion motion) =>
        practice.Measures.FirstOrDefault(m => m.Motion.Name == motion.Name)?.How is { } how ? $" Measured so: {how}" : "";
}
