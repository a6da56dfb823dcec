namespace Gradus.Domain;

/// <summary>Whom to call in an emergency in a country.</summary>
/// <param name="Country">Two capital letters, ISO 3166.</param>
/// <param name="Call">As it is dialled: digits, blanks, and a plus before them where there is one.</param>
/// <param name="Unsure">Likewise, for whoever does not know how urgent it is; null where there is none.</param>
/// <param name="Text">What the coach adds, in the coach's language; null where nothing.</param>
public sealed record EmergencyNumber(string Country, string Call, string? Unsure, string? Text)
{
    /// <summary>The placeholder that stands for the number in a coach's text, without braces.</summary>
    public const string Placeholder = "emergency";
}
