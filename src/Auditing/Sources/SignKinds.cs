using Gradus.Domain;

namespace Gradus.Auditing.Sources;

internal static class SignKinds
{
    /// <summary>Whether the exercise itself names a caution of that kind. One that could not be read may be of any kind: that is
    /// said at its file.</summary>
    public static bool Has(Practice practice, Exercise exercise, CautionKind kind) =>
        exercise.Signs.Any(sign => practice.Find(sign.Value) is not { } caution || caution.Kind == kind);
}
