namespace Gradus.Domain;

/// <summary>What a clinician asked a client to leave out or to do with less, without a condition for it.</summary>
/// <param name="By">Who said so.</param>
/// <param name="On">The first day it holds.</param>
/// <param name="Until">The last day it holds.</param>
/// <param name="Joint">What must be spared; null where no place is named.</param>
/// <param name="Side">Null for both sides, and where the region has none.</param>
/// <param name="Movement">The name of the motion that must be spared; null where none is named.</param>
/// <param name="Limits">Within which it may be done; empty where it is not done at all.</param>
public sealed record Restriction(
    string By,
    DateOnly On,
    DateOnly Until,
    Region? Joint,
    Side? Side,
    string? Movement,
    Series<ClearanceLimit> Limits,
    Location At
)
{
    /// <summary>"left knee", "knee flexion", "whatever is done", as a coach wrote it.</summary>
    public string Place
    {
        get
        {
            string[] named = [.. Joint is null ? [] : new[] { Joint.On(Side) }, .. Movement is null ? [] : new[] { Movement }];
            return named.Length == 0 ? "whatever is done" : string.Join(", ", named);
        }
    }
}
