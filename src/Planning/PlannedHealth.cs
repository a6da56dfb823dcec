using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What the client said of their health. It stands on before-you-start alone; what was answered with yes stands
/// also beside the exercises that it concerns.</summary>
/// <param name="Agreed">Who agreed to the training, and when: a sentence for each.</param>
/// <param name="Answers">Those that the practice shows, in the order in which they were asked.</param>
/// <param name="Elsewhere">Who has the others; null where all are shown.</param>
/// <param name="Clearances">Those in force on some day of the programme.</param>
public sealed record PlannedHealth(
    Series<string> Agreed,
    DateOnly Answered,
    Series<PlannedAnswer> Answers,
    string? Elsewhere,
    Series<PlannedClearance> Clearances
);

public sealed record PlannedAnswer(string Question, string Reply);

public sealed record PlannedClearance(string Condition, string By, DateOnly On, DateOnly Until, Series<string> Limits);
