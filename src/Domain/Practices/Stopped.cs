namespace Gradus.Domain;

/// <summary>A client trains no more with what this coach writes.</summary>
/// <param name="On">The first day on which no pages are made.</param>
/// <param name="Because">For the coach alone; it stands on no page. Empty where nothing is said.</param>
public sealed record Stopped(DateOnly On, string Because);
