using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Tests.Planning;

/// <summary>The sheet of questions of a practice, as the command makes it.</summary>
internal static class AskedSheet
{
    public static IntakeSheet Of(Practice practice) =>
        IntakeSheet.Of(
            practice.Card,
            practice.Words.In(practice.Card.Language) ?? throw new ArgumentException("No catalogue.", nameof(practice)),
            Screening.Asked(practice)
        );
}
