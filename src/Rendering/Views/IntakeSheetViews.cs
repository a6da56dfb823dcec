using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Intake sheet → what its template sees.</summary>
internal static class IntakeSheetViews
{
    private const int MostPlaces = 3;

    public static IntakeSheetView Of(IntakeSheet sheet, string policy, Html style, Html script)
    {
        var words = sheet.Words;
        (string, object) coach = ("coach", sheet.Coach);
        return new(
            words.Language,
            words.Direction,
            policy,
            style,
            script,
            AnswersFile.Name,
            sheet.Practice,
            sheet.Coach,
            sheet.Contact.Email,
            sheet.Contact.Phone,
            PhoneAddress.Digits(sheet.Contact.Phone),
            words.Say("written-by", coach, ("practice", sheet.Practice)),
            words.Say("intake-for", coach, ("practice", sheet.Practice)),
            words.Say("intake-to-coach", coach),
            words.Say("intake-send", coach),
            words.Say("intake-print", coach),
            words.Say("intake-hand-over", coach),
            [
                .. sheet.Questions.Select(
                    (q, i) =>
                        new IntakeQuestionView(
                            i + 1,
                            q.Id.Text,
                            q.Question,
                            q.Replies == IntakeReplies.YesOrNoBySide,
                            q.Replies == IntakeReplies.Pains
                        )
                ),
            ],
            Places(words),
            words.Say("intake-saved", ("file", AnswersFile.Name)),
            string.Join('\n', Enumerable.Range(1, sheet.Questions.Count).Select(n => words.Say("intake-left-open", ("n", n))))
        );
    }

    private static PlacesView Places(Words words)
    {
        RegionView[] regions =
        [
            .. Region.All.Select(r => new RegionView(r.Name, words.Say("region-" + Kebab.OfWords(r.Name)), r.IsSided)),
        ];
        return new(
            [.. Enumerable.Range(1, MostPlaces).Select(n => words.Say("intake-place", ("number", n)))],
            [.. Enumerable.Range(1, 10).Select(PageViews.Number)],
            [.. regions],
            words.Say("intake-regions", ("regions", words.Joined([.. regions.Select(r => r.Words)], "comma")))
        );
    }
}
