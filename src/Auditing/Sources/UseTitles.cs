using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

internal static class UseTitles
{
    /// <summary>How the coach calls the exercise of a use.</summary>
    public static string TitleOf(this Practice practice, Use use) => practice.Of(use.Exercise.Id).Title;
}
