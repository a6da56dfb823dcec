using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a number may be.</summary>
/// <param name="Noun">With its article: "a count".</param>
/// <param name="Unit">Behind the number in a message, as <c>%</c>; mostly empty.</param>
internal sealed record NumberBound(string Noun, Count Range, string Unit = "")
{
    public static readonly NumberBound Count = new("a count", DoseBounds.Counts);
    public static readonly NumberBound Breaths = new("a number of breaths", DoseBounds.Counts, " breaths");
    public static readonly NumberBound Reps = new("a number of reps", DoseBounds.Counts, " reps");
    public static readonly NumberBound Metres = new("a number of metres", DoseBounds.Metres, " m");
    public static readonly NumberBound Percent = new("a percentage", DoseBounds.Percents, "%");
    public static readonly NumberBound Rating = new("a felt effort", DoseBounds.Ratings);
    public static readonly NumberBound Steps = new("the number of steps", DoseBounds.RampSteps);
    public static readonly NumberBound Plus = new("the number of sets after plus", DoseBounds.Counts);
    public static readonly NumberBound Leave = new("the number of repetitions to leave", DoseBounds.Leave);
}
