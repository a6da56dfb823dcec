using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What the client said of their health. Whole it stands on before-you-start alone; what was answered with yes stands
/// also beside the exercises that it concerns.</summary>
/// <param name="Agreed">Who agreed to the training, and when: a sentence for each.</param>
public sealed record PlannedHealth(
    Series<string> Agreed,
    DateOnly Answered,
    Series<PlannedAnswer> Answers,
    Series<PlannedClearance> Clearances
);

public sealed record PlannedAnswer(string Question, string Reply);

public sealed record PlannedClearance(string Condition, string By, DateOnly On, DateOnly Until, Series<string> Limits);
