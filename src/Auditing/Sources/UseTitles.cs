using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>How a use is spoken of.</summary>
internal static class UseTitles
{
    /// <summary>How the coach calls the exercise of a use.</summary>
    public static string TitleOf(this Practice practice, Use use) => practice.Of(use.Exercise.Id).Title;

    /// <summary>The last week of a use before the first that is beyond a limit, as a sentence to add behind another; nothing
    /// where that is its first.</summary>
    public static string LastWithin(this Use use, WeekDose beyond) =>
        use.Weeks.LastOrDefault(w => w.Week < beyond.Week) is { } last ? $" Week {last.Week} is the last that is within it." : "";
}
