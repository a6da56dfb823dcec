using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>What templates see. They never see the plan itself, so a theme cannot come to depend on its shape.</summary>
/// <param name="Policy">What a page may load, for its first line.</param>
/// <param name="Pages">Those that every page leads to.</param>
/// <param name="Course">What the scripts that find this week read, as attributes of the page's main part.</param>
/// <param name="Begins">What is said before the first week.</param>
/// <param name="Scripts">Those that the pages ask for, in the order in which they need each other.</param>
internal sealed record SiteView(
    string Policy,
    string Language,
    string Direction,
    string Title,
    string Name,
    string Practice,
    string Coach,
    string Email,
    string Phone,
    string PhoneLink,
    string WrittenBy,
    EmergencyView Emergency,
    string GoodUntil,
    string GoodUntilDay,
    string GoodUntilPast,
    Html Scope,
    Series<LinkView> Pages,
    Series<AttributeView> Course,
    Series<WeekNowView> WeeksNow,
    string Begins,
    string AfterBreak,
    string AfterLongBreak,
    Series<PauseView> Pauses,
    Series<AttributeView> Told,
    Series<string> Scripts
);

/// <param name="Call">The number, as it is read.</param>
/// <param name="Press">What a link to it says.</param>
/// <param name="Now">What is said to whoever has a sign that cannot wait.</param>
/// <param name="Link">Where a link to it leads.</param>
internal sealed record EmergencyView(string Call, string Link, string Press, string Now, Html Sentence, Html ChestFirst);

internal sealed record AttributeView(string Name, string Value);

/// <summary>A week, for when it is this one.</summary>
/// <param name="Words">"Week 2 of 6"</param>
/// <param name="Name">"Week 2"</param>
internal sealed record WeekNowView(string Number, string Words, string Name);

internal sealed record LinkView(string Path, string Text);

/// <summary>A word of the page that is explained at its foot.</summary>
/// <param name="Id">Where the links from the texts lead.</param>
internal sealed record TermView(string Id, string Word, string Explanation)
{
    public static TermView Of(Inline.Term term) => new(PageId.Term(term), term.Word, term.Explanation);
}

/// <summary>A span of time: the ISO 8601 duration and the words beside it.</summary>
internal sealed record TimeView(string Iso, string Words, bool About)
{
    /// <summary>To the second: "1 min 48 s".</summary>
    public static TimeView Of(Seconds span, bool about, Words words) => new(span.ToIsoDuration(), words.ShortSpan(span), about);

    /// <summary>As a person says how long something takes: "about 10 min".</summary>
    public static TimeView Roughly(Seconds span, Words words) => new(span.ToIsoDuration(), words.About(span), true);
}

/// <summary>A day of the calendar: ISO 8601 and in words.</summary>
internal sealed record DateView(string Iso, string Words)
{
    public static DateView Of(DateOnly date, Words words) => new(date.Iso(), words.Date(date));
}

/// <param name="Before">Where the page to be read first is.</param>
/// <param name="Weeks">Where the page of the weeks is.</param>
/// <param name="Progress">Where the page of what was measured is; empty where there is none.</param>
/// <param name="Stops">The signs to stop for, by their titles.</param>
internal sealed record HomeView(
    string Before,
    string Weeks,
    string Progress,
    Series<string> Stops,
    string Title,
    string Length,
    DateView Start,
    DateView End,
    Series<StanceView> Stances,
    string Calendar,
    Html Letter,
    Series<SessionCardView> Sessions,
    Series<NewsView> News,
    string CallCoach
);

/// <summary>What is other in a week than in the one before.</summary>
internal sealed record NewsView(string Week, string Said);

/// <param name="Weekdays">Its fixed days, 1 for Monday to 7 for Sunday.</param>
/// <param name="Instead">The sessions that the client may choose in its place.</param>
internal sealed record SessionCardView(
    string Path,
    string Number,
    string Name,
    string Days,
    string Weekdays,
    Series<LengthView> Lengths,
    Series<string> Equipment,
    Series<SessionCardView> Instead
);

/// <summary>How long a session is in some weeks.</summary>
/// <param name="Weeks">Their numbers, for a script.</param>
internal sealed record LengthView(string Weeks, string Heading, TimeView Time);

/// <param name="Retest">When the ranges are measured again, where that is behind the last week; else empty.</param>
internal sealed record ProgrammeWeeksView(
    string Minutes,
    Series<WeekView> Weeks,
    string Retest,
    Series<SharesView> Shares,
    Series<CheckView> MoveOn
);

/// <summary>What page one says in a pause.</summary>
/// <param name="Days">"2026-12-21/2027-01-03"</param>
internal sealed record PauseView(string Days, string Said);

/// <param name="Pauses">When nothing is done right before it.</param>
/// <param name="Total">Of the sessions that have their number of times.</param>
/// <param name="More">Whether some sessions come on top, as often as the client plays.</param>
/// <param name="Retest">When the ranges are measured again, where that is in this week; else empty.</param>
internal sealed record WeekView(
    string Id,
    string Number,
    string Heading,
    Series<string> Pauses,
    Series<WeekSessionView> Sessions,
    TimeView Total,
    bool More,
    string Retest
);

internal sealed record WeekSessionView(LinkView Session, string When, TimeView Once);

/// <summary>Where the time of a session goes, in figures and as a bar.</summary>
/// <param name="Sentence">The bar in words.</param>
internal sealed record SharesView(
    LinkView Session,
    string Weeks,
    string Sentence,
    TimeView Work,
    TimeView Rest,
    TimeView Moving,
    TimeView Total,
    Series<BarView> Bar
);

/// <param name="Kind">work, rest or moving; of a measured range error, mark or read.</param>
/// <param name="From">Where it begins, in units of a picture 1000 wide, to a tenth.</param>
internal sealed record BarView(string Kind, string From, string Width);

internal sealed record CheckView(string Heading, Series<string> Conditions);

/// <param name="Roles">A sentence for each side's name of the sport.</param>
/// <param name="Sentences">The question with its answer, and what follows from it.</param>
internal sealed record StanceView(string Sport, string Question, string Answer, Series<string> Roles, Series<string> Sentences);

internal sealed record BeforeView(
    Series<StanceView> Stances,
    Series<string> Agreed,
    DateView Answered,
    string AnsweredSentence,
    Series<AnswerView> Answers,
    string? AnswersElsewhere,
    Series<ClearanceView> Clearances,
    CautionsView Cautions
);

internal sealed record AnswerView(string Question, string Reply);

internal sealed record ClearanceView(string Condition, string Sentence, Series<string> Limits);

/// <param name="PainRule">Null on a page that does not ask for pain.</param>
/// <param name="Asked">Empty where there are no notes.</param>
/// <param name="Notes">Who must leave something out, or ask first: one for each condition.</param>
internal sealed record CautionsView(Series<CautionGroupView> Groups, NoteView? PainRule, string Asked, Series<NoteView> Notes);

/// <param name="Kind">stop, ease-off, take-care or expect.</param>
internal sealed record CautionGroupView(string Kind, string Heading, Series<CautionView> Cautions);

internal sealed record CautionView(string Id, string Title, Html Body, string Exercises);

internal sealed record NoteView(string Title, Series<string> Sentences);

/// <summary>How an exercise looks at its start, or at its end.</summary>
/// <param name="Label">"Start", "End"</param>
/// <param name="Picture">The picture, or what it shows where it cannot be shown.</param>
/// <param name="IsWide">A figure that lies, which is small beside another on a phone.</param>
internal sealed record PictureView(string Label, Html Picture, bool IsWide);

/// <param name="In">The numbers of the weeks, for a script.</param>
/// <param name="Change">What is other than before.</param>
internal sealed record DoseView(string In, string Weeks, string Change, TimeView Time);

/// <param name="Pictures">Start and end, as far as it has pictures of them.</param>
/// <param name="Figures">Each figure of the page once, for what is shown elsewhere on it.</param>
/// <param name="Versions">An easier and a harder exercise, where the client has them.</param>
internal sealed record ExerciseView(
    string Title,
    string Trains,
    string Stage,
    string Position,
    Series<string> Equipment,
    Series<PictureView> Pictures,
    Html Why,
    Html SetUp,
    Html Doing,
    Html More,
    CautionsView Cautions,
    Series<ExerciseUseView> Uses,
    Series<LinkView> Versions,
    Html Figures
);

internal sealed record ExerciseUseView(
    LinkView Session,
    string Sides,
    Series<string> Notes,
    Series<string> MoveOn,
    Series<string> WeekNumbers,
    Series<RowView> Rows,
    Series<DoseView> Doses
);
