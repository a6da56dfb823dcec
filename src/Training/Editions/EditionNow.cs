using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Where what is planned now stands among what was published.</summary>
/// <param name="Number">Of the edition that it is, or will be once it is recorded; from 1.</param>
/// <param name="IsRecorded">Whether the last edition is this.</param>
/// <param name="ProgrammesBefore">How many programmes were over before this one began. One that took the place of another before
/// its end is the same, moved.</param>
/// <param name="Before">The last edition of the same programme that is another; null where there is none.</param>
/// <param name="Changes">What is other than in that; empty where there is none.</param>
public sealed record EditionNow(int Number, bool IsRecorded, int ProgrammesBefore, Edition? Before, Series<EditionChange> Changes)
{
    private static readonly EditionNow First = new(1, false, 0, null, []);

    public static EditionNow Of(Training training, Texts texts)
    {
        var client = texts.Client;
        if (client.Editions is not [.., var last])
            return First with { Number = client.LastEdition + 1 };
        var content = EditionContents.Of(training, texts);
        var hash = EditionText.HashOf(content);
        var isRecorded = last.PlanHash == hash;
        var before = client.Editions.LastOrDefault(e => e.PlanHash != hash && e.Content.Programme == content.Programme);
        return new(
            isRecorded ? last.Number : client.LastEdition + 1,
            isRecorded,
            Over(client.Editions.Select(e => e.Content).Append(content)),
            before,
            before is null ? [] : EditionComparison.Of(before.Content, content)
        );
    }

    private static int Over(IEnumerable<EditionContent> editions)
    {
        var (over, end) = (0, (DateOnly?)null);
        foreach (var edition in editions)
        {
            if (edition.Start > end)
                over++;
            end = edition.End;
        }

        return over;
    }
}
