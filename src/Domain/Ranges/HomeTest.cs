namespace Gradus.Domain;

/// <summary>A range that a client may measure alone, at home: one alone, because of no other was anything found that a client's
/// own hands and tape could tell. It is never compared with what the coach measured.</summary>
public static class HomeTest
{
    /// <summary>The measure that an exercise may name.</summary>
    public const string Offered = "knee to wall";

    /// <summary>Of the measure, as it is written beside the numbers.</summary>
    public const string Unit = "cm";

    /// <summary>How many tries a side.</summary>
    public const int Tries = 3;

    /// <summary>In the measure's unit: of three tries that lie further apart the client is asked for three others; common
    /// practice, no source.</summary>
    public const decimal FarApart = 1.5m;

    /// <summary>Whose sore joint it would load.</summary>
    public const string Joint = "ankle";
}
