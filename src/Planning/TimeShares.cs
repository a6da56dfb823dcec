using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Where the time of a session goes.</summary>
/// <param name="Work">Holding, breathing, pressing, pulling, raising, moving, carrying.</param>
/// <param name="Rest">Rests and pauses.</param>
/// <param name="Moving">Getting ready, changing sides, going from one exercise to the next.</param>
public sealed record TimeShares(Seconds Work, Seconds Rest, Seconds Moving)
{
    public Seconds Total => Work + Rest + Moving;

    public static TimeShares Of(IEnumerable<Step> steps)
    {
        var sums = steps.ToLookup(s => s.Kind.Use(), s => s.Seconds.Value);
        return new(SumOf(TimeUse.Work), SumOf(TimeUse.Rest), SumOf(TimeUse.Moving));

        Seconds SumOf(TimeUse use) => new(sums[use].Sum());
    }
}
