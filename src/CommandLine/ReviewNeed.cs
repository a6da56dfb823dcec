using System.Globalization;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>Why a client needs the coach, in the order in which that is said. Within one reason clients stand in the order of
/// their ids: nobody is ranked by a number.</summary>
internal enum NeedKind
{
    Now,
    SameDay,
    Pain,
    Health,
    Wrote,
    GoneQuiet,
    HarderThanMeant,
    MoreThanWritten,
    TooLittle,
    Retest,
    EndsSoon,
    ProgrammeOver,
    NotPublished,
}

/// <param name="Says">What came back, and when.</param>
/// <param name="Do">What to do about it.</param>
internal sealed record ReviewNeed(NeedKind Kind, Client Client, string Says, string Do)
{
    /// <summary>How long before answers or a clearance end that is said; common practice, no source.</summary>
    private const int DaysBefore = 21;

    /// <summary>For so many days what a client wrote stands among what is looked at first.</summary>
    private const int DaysToRead = 14;

    /// <summary>So many of a client's notes stand there; all of them stand below.</summary>
    private const int MostNotes = 3;

    public static string TitleOf(NeedKind kind) =>
        kind switch
        {
            NeedKind.Now => "At once",
            NeedKind.SameDay => "A clinician the same day",
            NeedKind.Pain => "Pain",
            NeedKind.Health => "News of health",
            NeedKind.Wrote => "In their own words",
            NeedKind.GoneQuiet => "Gone quiet",
            NeedKind.HarderThanMeant => "Harder than meant",
            NeedKind.MoreThanWritten => "More than written",
            NeedKind.TooLittle => "Much less than planned",
            NeedKind.Retest => "To be measured again",
            NeedKind.EndsSoon => "Answers or clearances that end soon",
            NeedKind.ProgrammeOver => "Programme over",
            NeedKind.NotPublished => "Not published since a change",
        };

    /// <summary>Of one client, in the order of the reasons. Who has stopped is not asked after, but for a sign that cannot
    /// wait.</summary>
    public static IEnumerable<ReviewNeed> Of(Practice practice, ClientReview review) =>
        OfPain(practice, review)
            .Concat(OfHealth(review))
            .Concat(OfWords(practice, review))
            .Concat(OfDoing(practice, review))
            .Concat(OfDates(practice, review))
            .Concat(OfPublishing(practice, review))
            .Where(n => review.StoppedOn is null || n.Kind is NeedKind.Now or NeedKind.SameDay)
            .OrderBy(n => n.Kind);

    private static IEnumerable<ReviewNeed> OfPain(Practice practice, ClientReview review)
    {
        var client = review.Client;
        // Until they are asked again, as of everything that came back.
        foreach (var entry in LogBook.Joined(client.Log).Where(e => e.Day >= client.Answered && e.Day <= review.Came.Today))
            if (UrgentSign.InNote(entry, practice.Exercises.Select(e => e.Id)) is { } note)
                yield return new(
                    NeedKind.Now,
                    client,
                    $"{note}, on {entry.Day.Iso()}",
                    "Read it, and ask at once; what they say is written in the answers, with the day."
                );
        var guardian = client.Born.IsIn(AgeBand.Under18, client.Programme) ? " Tell the guardian too." : "";
        foreach (var pain in review.OpenPains.DistinctBy(p => (p.Kind, p.Place)))
            yield return new(
                pain.Kind switch
                {
                    PainKind.Now => NeedKind.Now,
                    PainKind.SameDay => NeedKind.SameDay,
                    _ => NeedKind.Pain,
                },
                client,
                $"{ReturnWords.Of(pain)} on {pain.Day.Iso()}",
                ReviewSentences.AdviceFor(practice, review.Training, pain) + guardian
            );
    }

    /// <summary>What stands in the way of a plan is said by the audit, and not here.</summary>
    private static IEnumerable<ReviewNeed> OfPublishing(Practice practice, ClientReview review)
    {
        // What came back and is not answered stops the next publishing anyway, and by itself makes the pages other.
        if (review.Training.Refusals.Count > 0 || review.IsUnsettled)
            yield break;
        var now = EditionNow.Of(review.Training, Texts.Of(practice, review.Client));
        if (now.IsRecorded)
            yield break;
        yield return new(
            NeedKind.NotPublished,
            review.Client,
            review.Client.Editions is [.., var last]
                ? $"something changed since edition {N(last.Number)} of {last.Date.Iso()}"
                : "nothing was published yet",
            "Publish, and send it; 'gradus compare' says what is other."
        );
    }

    /// <summary>The days without a session that came back since the client was asked, with what was said of them. Where a sign
    /// stopped it, that is said already.</summary>
    private static IEnumerable<(DateOnly Day, NotTodayReason? For)> NotTodays(ClientReview review) =>
        from entry in LogBook.Joined(review.Client.Log)
        where entry.Outcome is LogOutcome.NotToday && entry.Alarm is null && entry.Day >= review.Client.Answered
        where entry.Day <= review.Came.Today
        select (entry.Day, ((LogOutcome.NotToday)entry.Outcome).For);

    private static IEnumerable<ReviewNeed> OfHealth(ClientReview review) =>
        from day in NotTodays(review)
        group day.Day by day.For into days
        let said = days.Key switch
        {
            NotTodayReason.Health => (
                NeedKind.Health,
                "a new medicine or diagnosis, or a fall",
                "Ask everything again, and write the new date; a clinician where it is new."
            ),
            NotTodayReason.Pain => (NeedKind.Pain, "pain", "Ask where, and how much; do less, or rest, until you know."),
            NotTodayReason.Ill => (NeedKind.Health, "illness", "Ask before they begin again, and begin with less."),
            _ => ((NeedKind Kind, string What, string Do)?)null,
        }
        where said is not null
        select new ReviewNeed(
            said.Value.Item1,
            review.Client,
            $"no session because of {said.Value.Item2}: {string.Join(", ", days.Select(d => d.Iso()))}",
            said.Value.Item3
        );

    /// <summary>No list of words knows what tells of harm: whatever somebody wrote is read by the coach, and stands where it is
    /// not overlooked.</summary>
    private static IEnumerable<ReviewNeed> OfWords(Practice practice, ClientReview review)
    {
        var exercises = practice.Exercises.Select(e => e.Id).ToArray();
        var notes = LogBook
            .Joined(review.Client.Log)
            .Where(e => e.Note.Length > 0 && e.Day <= review.Came.Today && e.Day > review.Came.Today.AddDays(-DaysToRead))
            .Where(e => e.Day < review.Client.Answered || UrgentSign.InNote(e, exercises) is null)
            .Reverse()
            .ToArray();
        if (notes.Length == 0)
            yield break;
        var others = notes.Length - MostNotes;
        yield return new(
            NeedKind.Wrote,
            review.Client,
            string.Join("; ", notes.Take(MostNotes).Select(e => $"{e.Day.Iso()}: \"{e.Note.Trim()}\""))
                + (others > 0 ? $"; and {N(others)} more" : ""),
            "Read it: what harms has more words than Gradus knows."
        );
    }

    private static IEnumerable<ReviewNeed> OfDoing(Practice practice, ClientReview review)
    {
        var (client, came) = (review.Client, review.Came);
        if (review.QuietSince is { } since)
            yield return new(
                NeedKind.GoneQuiet,
                client,
                came.Log.Until is null
                    ? $"nothing came back since the programme began on {since.Iso()}"
                    : $"the last that came back is of {since.Iso()}",
                "Ask how it goes. No log does not mean that nothing was done."
            );
        if (came.Effort.IsHarderThanMeant)
            yield return new(
                NeedKind.HarderThanMeant,
                client,
                $"effort 9 or 10 where the plan says 6 at most: {Days(came.Effort.TooHard)}",
                "Ask what was hard, and write less."
            );
        foreach (var more in came.Sets.Where(s => s.IsMore).GroupBy(s => (s.Motion, s.Side)))
            yield return new(
                NeedKind.MoreThanWritten,
                client,
                $"{ReviewSentences.MotionOf(more.Key.Motion, more.Key.Side)}: "
                    + string.Join("; ", more.Select(s => $"week {N(s.Week)}, {ReviewSentences.Of(s)}")),
                "Ask why: the plan is what was checked, more of it was not."
            );
        // Who was ill or hurt says so; the plan is not too long for that.
        var isExplained = NotTodays(review).Any(e => e.For is NotTodayReason.Ill or NotTodayReason.Pain or NotTodayReason.Health);
        if (came.TooLittle is { } little && !isExplained)
            yield return new(
                NeedKind.TooLittle,
                client,
                $"fewer than half of the planned sessions in weeks {N(little.Number - 1)} and {N(little.Number)}",
                "Ask what is in the way; the plan may be too long."
            );
        if (came.Missed is { } missed && !isExplained)
            yield return new(
                NeedKind.TooLittle,
                client,
                $"{N(missed.Sessions)} planned sessions running were not done, {missed.From.Iso()} to {missed.Until.Iso()}",
                "The page offers an earlier week by its own rule; ask what is in the way."
            );
        // Nobody measures what hurts.
        if (came.Retests.Count > 0 && !review.IsUnsettled)
            yield return new(
                NeedKind.Retest,
                client,
                string.Join(". ", ReviewSentences.OfAll(came.Retests)),
                ReviewSentences.Again
                    + (came.TellsLittle ? " Fewer than half of the sessions were done: it will tell little." : "")
            );
    }

    private static IEnumerable<ReviewNeed> OfDates(Practice practice, ClientReview review)
    {
        var (client, today) = (review.Client, review.Came.Today);
        if (today > client.Programme.End)
        {
            yield return new(
                NeedKind.ProgrammeOver,
                client,
                $"{client.Programme.Title} ended on {client.Programme.End.Iso()}",
                "Measure, talk, and write the next one."
            );
            yield break;
        }

        var answers = Validity.AnswersUntil(practice, client);
        if (answers < today.AddDays(DaysBefore))
            yield return new(
                NeedKind.EndsSoon,
                client,
                $"the answers about health {(answers < today ? "ended" : "end")} on {answers.Iso()}",
                "Ask again, and write the new date."
            );
        foreach (
            var condition in practice.Conditions.Where(c =>
                review.Training.Uses.Any(u => Screening.RestsOnClearance(practice, client, u, c))
            )
        )
            if (Validity.ClearedUntil(client, condition) is { } until && until < today.AddDays(DaysBefore))
                yield return new(
                    NeedKind.EndsSoon,
                    client,
                    $"the clearance for {condition.Name} {(until < today ? "ended" : "ends")} on {until.Iso()}",
                    "Ask for a new one, or end what rests on it before."
                );
    }

    private static string Days(IEnumerable<LogEntry> entries) => string.Join(", ", entries.Select(e => e.Day.Iso()));

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
