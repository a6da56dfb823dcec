using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What a page's script needs to find this week by itself: from the first day, and from what the client has
/// done.</summary>
/// <param name="Key">Under which a browser keeps what was done; the same as long as it is the same programme of the same client,
/// and nobody's name can be read from it.</param>
/// <param name="Pauses">When nothing is done, in the order of the days.</param>
/// <param name="DaysBackOneWeek">After more days than these without training the last week is offered again.</param>
/// <param name="DaysBackToFirst">After more days than these the first.</param>
/// <param name="Needs">For each week, how often each session is to be done; those before play are not among them.</param>
/// <param name="Instead">Which session counts as which other.</param>
/// <param name="EaseOffAbove">Pain, 0 to 10, above which the client does less today.</param>
/// <param name="StopAbove">Pain, 0 to 10, above which the client does not train today.</param>
/// <param name="Edition">Of the pages, from 1; the log says it, so that it is known what was asked.</param>
public sealed record PlannedCourse(
    string Key,
    DateOnly Start,
    Series<Pause> Pauses,
    int DaysBackOneWeek,
    int DaysBackToFirst,
    Series<Series<(int Session, int Times, int DaysBetween)>> Needs,
    Series<(int Session, int For)> Instead,
    int EaseOffAbove,
    int StopAbove,
    int Edition
)
{
    public int Weeks => Needs.Count;

    internal static PlannedCourse Of(Training training, Client client, int edition) =>
        new(
            CourseKey.Of(client),
            training.Start,
            client.Programme.Pauses.Select(p => new Pause(p.From, p.Until)).ToSeries(),
            training.Rules.DaysBackOneWeek,
            training.Rules.DaysBackToFirst,
            training
                .Weeks.Select(w =>
                    w.Sessions.Where(s => s.Times is not null)
                        .Select(s => (s.Session, s.Times ?? 0, DaysBetween(training.Sessions[s.Session - 1])))
                        .ToSeries()
                )
                .ToSeries(),
            training.Sessions.Where(s => s.InsteadOf is not null).Select(s => (s.Number, s.InsteadOf ?? 0)).ToSeries(),
            training.Rules.EaseOffAbove,
            training.Rules.StopAbove,
            edition
        );

    /// <summary>As a page writes it for its script, name and value.</summary>
    public Series<(string Name, string Value)> Attributes() =>
        PageData
            .OfCourse.Zip<string, string>([
                Key,
                Start.Iso(),
                string.Join(' ', Pauses.Select(DaysOf)),
                Text($"{DaysBackOneWeek} {DaysBackToFirst}"),
                string.Join(
                    ';',
                    Needs.Select(w =>
                        string.Join(' ', w.Select(s => Text($"{s.Session}x{s.Times}{(s.DaysBetween == 1 ? "" : "x0")}")))
                    )
                ),
                string.Join(' ', Instead.Select(s => Text($"{s.Session}={s.For}"))),
                Text($"{EaseOffAbove} {StopAbove}"),
                Text($"{Edition}"),
            ])
            .ToSeries();

    /// <summary>"2026-12-21/2027-01-03", an interval of ISO 8601; both days belong to it.</summary>
    internal static string DaysOf(Pause pause) => $"{pause.From.Iso()}/{pause.Until.Iso()}";

    private static int DaysBetween(TrainedSession session) =>
        session.Days is SessionDays.TimesAWeek { DayBetween: false } ? 0 : 1;

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
