using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>What stands at the pictures of start and end of an exercise.</summary>
internal static class PairWording
{
    public static Wording Of(ExerciseText text, Words words) =>
        Order(Of(text.Start, words.Say("picture-start")), Of(text.End, words.Say("picture-end")));

    /// <summary>What a picture shows is its label, and stands as text where the picture itself cannot.</summary>
    private static Wording Of(Inline? picture, string label) =>
        picture switch
        {
            null => Order(),
            Inline.Plain said => Order(May(label), May(said.Words)),
            Inline.Drawn drawn => Order(May(label), May(drawn.Title), May(drawn.Shows), May(drawn.Letter)),
            _ => Order(May(label)),
        };
}
