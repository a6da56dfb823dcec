namespace Gradus.Domain;

/// <summary>Days on which nothing of a programme is done.</summary>
/// <param name="From">The first day.</param>
/// <param name="Until">The last day.</param>
public sealed record Pause(DateOnly From, DateOnly Until)
{
    /// <summary>Why, for the coach alone; it stands on no page. Empty where nothing is said.</summary>
    public string Because { get; init; } = "";

    public bool Has(DateOnly day) => From <= day && day <= Until;
}
