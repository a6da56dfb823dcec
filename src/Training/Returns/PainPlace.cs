using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Where it hurts: a region and its side.</summary>
/// <param name="Where">Null where nobody said where.</param>
/// <param name="Side">Null where the region has no sides, both hurt, or nobody said which.</param>
public sealed record PainPlace(Region? Where, Side? Side)
{
    public static readonly PainPlace NotSaid = new(null, null);

    /// <summary>Whether both may be the same: one of a region whose side was not said may be either.</summary>
    public bool Meets(PainPlace other) => Where == other.Where && (Side is null || other.Side is null || Side == other.Side);

    /// <summary>Whether that use loads it. Of a place that nobody named everything does.</summary>
    public bool IsLoadedBy(Use use) => Where is null || use.Bears(Where, Side);

    /// <summary>"left knee", as a coach writes it; "a place that was not said".</summary>
    public override string ToString() => Where?.On(Side) ?? "a place that was not said";
}
