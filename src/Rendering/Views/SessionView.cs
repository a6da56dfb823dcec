using Gradus.Domain;

namespace Gradus.Rendering;

/// <param name="Figures">Each figure of the page once, for what is shown elsewhere on it.</param>
/// <param name="Grid">The weeks of what is filled in on paper, a row for each time that the session is done.</param>
internal sealed record SessionView(
    string Number,
    string Name,
    string Days,
    Series<LengthView> Lengths,
    Series<string> Equipment,
    CautionsView Cautions,
    Series<UseView> Uses,
    Series<string> WeekNumbers,
    Series<WeeksView> Weeks,
    Series<GridWeekView> Grid,
    GuideView Guide,
    Html Figures
);

/// <param name="Times">How often the session is done in it, at least once.</param>
internal sealed record GridWeekView(string Number, int Times);

/// <param name="Id">Of the exercise.</param>
/// <param name="Place">The id of its place on the page.</param>
/// <param name="Loads">Regions of the body, for a script.</param>
/// <param name="Planned">The numbers of its weeks, for a script.</param>
/// <param name="Later">From which week it is done; empty where that is the first of the session.</param>
/// <param name="Signs">The names of its cautions, kind by kind.</param>
/// <param name="Rows">What each week asks.</param>
/// <param name="OnPaper">What stands above the lines for it.</param>
/// <param name="Unit">Of what is measured in it; empty where nothing is.</param>
/// <param name="Pictures">Start and end, as far as the exercise has pictures of them.</param>
internal sealed record UseView(
    string Id,
    string Letter,
    string Place,
    string Loads,
    string Planned,
    string Later,
    string Title,
    string Path,
    string Sides,
    Series<string> Notes,
    Series<string> MoveOn,
    Series<SignNamesView> Signs,
    Series<PictureView> Pictures,
    Html SetUp,
    Html Doing,
    Html More,
    Series<RowView> Rows,
    string Unit,
    string OnPaper
);

internal sealed record SignNamesView(string Kind, string Heading, string Names);

internal sealed record RowView(string What, Series<CellView> Cells);

/// <param name="Weeks">How many columns it is wide.</param>
internal sealed record CellView(int Weeks, string Said);

/// <param name="In">The numbers of the weeks, for a script.</param>
internal sealed record WeeksView(string Id, string In, string Heading, TimeView Total, Series<StepView> Steps);

/// <param name="Data">What the script that leads through the session reads.</param>
/// <param name="IsWork">Neither a rest nor a change from one thing to the next.</param>
internal sealed record StepView(string Data, bool IsWork, string Words, string Detail, TimeView Time);
