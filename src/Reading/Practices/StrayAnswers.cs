using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Sheets of answers beside the one that is read: they would be taken for read.</summary>
internal static class StrayAnswers
{
    public static void Find(SourceFolder folder, ClientId id, Findings findings)
    {
        var beginning = $"clients/{id}/";
        foreach (var path in folder.Below(beginning))
            if (IsOne(path[beginning.Length..]))
                findings.Add(
                    new(
                        Faults.FileNameWrong,
                        Level.Error,
                        id,
                        Location.Whole(path),
                        "This looks like answers, and it is not read.",
                        $"Name the newest sheet {AnswersFile.Name}, and take the others away: an answer that nobody "
                            + "reads protects nobody."
                    )
                );
    }

    private static bool IsOne(string file) =>
        file != AnswersFile.Name && file.StartsWith("answers", StringComparison.OrdinalIgnoreCase);
}
