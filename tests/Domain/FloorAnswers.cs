using System.Globalization;

namespace Gradus.Tests.Domain;

/// <summary>A client's answers to the questions that everybody is asked, as an intake sheet saves them: nothing is wrong, and the
/// client is active.</summary>
internal static class FloorAnswers
{
    /// <summary>The ids that practice-format.md lists as always asked, in their order.</summary>
    public static readonly string[] Ids =
    [
        "heart-disease",
        "metabolic-disease",
        "kidney-disease",
        "signs-or-symptoms",
        "breathless-at-night",
        "dizzy-spells",
        "calf-pain-or-swelling",
        "blood-clot",
        "hot-swollen-joint",
        "fever",
        "regularly-active",
        "raised-blood-pressure",
        "bone-thinning",
        "joint-replacement",
        "recent-surgery",
        "recent-injury",
        "back-pain-with-leg-signs",
        "very-mobile-joints",
        "pregnancy-or-birth",
        "blood-thinners",
        "eye-pressure-or-retina",
        "hernia",
        "asthma",
        "insulin",
        "seizures",
        "falls",
        "numb-feet",
        "pain-now",
    ];

    /// <summary>The text of answers.yaml.</summary>
    /// <param name="but">Answers given elsewhere, which are left out here.</param>
    public static string Text(DateOnly answered, Func<string, bool> but) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"answered: {answered:yyyy-MM-dd}\nanswers:\n{string.Concat(Ids.Where(id => !but(id)).Select(Line))}"
        );

    private static string Line(string id)
    {
        var answer = id switch
        {
            "regularly-active" => "yes",
            "pain-now" => "0",
            _ => "no",
        };
        return $"  {id}: {answer}\n";
    }
}
