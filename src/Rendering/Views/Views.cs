using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>What templates see. They never see the plan itself, so a theme cannot come to depend on its shape.</summary>
internal sealed record SiteView(
    string Language, string Title, string Name, string Practice, string Coach, string Email, string Phone, string PhoneLink, string WrittenBy,
    string Emergency, string GoodUntil, Html Scope, Series<LinkView> Pages);

internal sealed record LinkView(string Path, string Text);

/// <summary>A span of time: the ISO 8601 duration and the words beside it.</summary>
internal sealed record TimeView(string Iso, string Words, bool About)
{
    public static TimeView Of(Seconds span, bool about, Words words) => new(span.ToIsoDuration(), words.Span(span), about);
}

/// <summary>A day of the calendar: ISO 8601 and in words.</summary>
internal sealed record DateView(string Iso, string Words)
{
    public static DateView Of(DateOnly date, Words words) => new(date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), words.Date(date));
}

internal sealed record HomeView(
    string Title, string Length, DateView Start, DateView End, string Calendar, Html Letter, Series<SessionCardView> Sessions);

/// <param name="Instead">The sessions that the client may choose in its place.</param>
internal sealed record SessionCardView(
    string Path, string Number, string Name, string Days, TimeView Shortest, TimeView Longest, bool Varies, Series<SessionCardView> Instead);

internal sealed record ProgrammeWeeksView(string Minutes, Series<WeekView> Weeks, Series<SharesView> Shares, Series<CheckView> MoveOn);

/// <param name="Total">Of the sessions that have their number of times.</param>
/// <param name="More">Whether some sessions come on top, as often as the client plays.</param>
internal sealed record WeekView(string Id, string Heading, Series<WeekSessionView> Sessions, TimeView Total, bool More);

internal sealed record WeekSessionView(LinkView Session, string When, TimeView Once);

/// <summary>Where the time of a session goes, in figures and as a bar.</summary>
/// <param name="Sentence">The bar in words.</param>
internal sealed record SharesView(LinkView Session, string Weeks, string Sentence, TimeView Work, TimeView Rest, TimeView Moving, TimeView Total, Series<BarView> Bar);

/// <param name="Kind">work, rest or moving.</param>
/// <param name="From">Where it begins, in units of a picture 1000 wide, to a tenth.</param>
internal sealed record BarView(string Kind, string From, string Width);

internal sealed record CheckView(string Heading, Series<string> Conditions);

internal sealed record BeforeView(
    string Sport, string Question, string Answer, Series<string> Roles, DateView Answered, string AnsweredSentence,
    Series<AnswerView> Answers, Series<ClearanceView> Clearances, CautionsView Cautions);

internal sealed record AnswerView(string Question, string Reply);

internal sealed record ClearanceView(string Condition, string Sentence, Series<string> Limits);

internal sealed record CautionsView(Series<CautionGroupView> Groups, Series<NotWithView> NotWith);

/// <param name="Kind">stop, ease-off, take-care or expect.</param>
internal sealed record CautionGroupView(string Kind, string Heading, Series<CautionView> Cautions);

internal sealed record CautionView(string Id, string Title, Html Body, string Exercises);

internal sealed record NotWithView(string Exercise, Series<string> Sentences);

internal sealed record SessionView(
    string Number, string Name, string Days, Series<string> Equipment, CautionsView Cautions, Series<UseView> Uses,
    Series<WeeksView> Weeks);

internal sealed record UseView(
    string Title, string Path, string Sides, Series<string> Notes, Series<string> MoveOn, Series<CautionGroupView> Cautions, Html SetUp, Html Doing, Html More, Series<DoseView> Doses);

/// <param name="Change">What is other than before.</param>
internal sealed record DoseView(string Weeks, string Words, string Change, TimeView Time);

internal sealed record WeeksView(string Id, string Heading, TimeView Total, Series<StepView> Steps);

/// <param name="Kind">hold, rest, get-ready…: for the style only.</param>
internal sealed record StepView(string Kind, string Words, string Detail, TimeView Time);

internal sealed record ExerciseView(
    string Title, string Trains, string Stage, string Position, Series<string> Equipment, Html Why, Html SetUp, Html Doing, Html More,
    CautionsView Cautions, Series<ExerciseUseView> Uses);

internal sealed record ExerciseUseView(LinkView Session, string Sides, Series<string> Notes, Series<string> MoveOn, Series<DoseView> Doses);
