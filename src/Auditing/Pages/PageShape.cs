using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a page tells a browser and a screen reader beside its text.</summary>
/// <param name="Language">As the root element says it; null where it says none.</param>
/// <param name="Direction">As the root element says it; null where it says none.</param>
/// <param name="Title">With single spaces; empty where there is none.</param>
/// <param name="Headings">Those that a screen reader gets, in order.</param>
/// <param name="Nameless">What a screen reader comes upon and has no name for.</param>
/// <param name="Written">Styles written into the page itself.</param>
/// <param name="Strange">What is not on the list of known markup.</param>
/// <param name="Words">Words and data that stand in attributes.</param>
/// <param name="Scripts">The scripts that it asks for, and those that stand in it.</param>
/// <param name="Past">What it tells a script to show after its last day.</param>
/// <param name="Weeks">What it tells a script of the weeks.</param>
public sealed record PageShape(
    string? Language,
    string? Direction,
    string Title,
    Series<HeadingSeen> Headings,
    Series<Oddity> Nameless,
    Series<Oddity> Written,
    Series<StrangeMarkup> Strange,
    Series<WordsAttribute> Words,
    Series<ScriptSeen> Scripts,
    Series<PastSeen> Past,
    WeeksSeen Weeks
);

/// <param name="Source">The address that it is asked for by; null where it stands in the page.</param>
/// <param name="Text">What stands in the page.</param>
/// <param name="IsDeferred">Whether it waits until the page is read.</param>
public sealed record ScriptSeen(string? Source, string Text, bool IsDeferred, Location At);

/// <summary>A notice for after the last day on which a page may be used.</summary>
/// <param name="Day">As it is written for the script.</param>
public sealed record PastSeen(string Day, string Text, Location At);

/// <summary>What a page tells a script, so that it finds this week and shows what belongs to it.</summary>
/// <param name="Courses">From which day on, and what is to be done in each week: the attributes of the plan's course, those that
/// are not there as empty texts.</param>
/// <param name="Parts">What belongs to some weeks: their numbers as written, and its heading, or its text where it has
/// none.</param>
/// <param name="Due">What is due on some weekdays.</param>
/// <param name="Planned">What is shown in some weeks alone.</param>
/// <param name="Doses">Where the doses of an exercise are taken from.</param>
public sealed record WeeksSeen(
    Series<CourseSeen> Courses,
    Series<WeekPartSeen> Parts,
    Series<DueSeen> Due,
    Series<PlannedSeen> Planned,
    Series<DosesSeen> Doses
);

/// <param name="Exercise">Of the article that it is; empty where it is none.</param>
/// <param name="Weeks">Their numbers as written.</param>
/// <param name="Letter">By which its dose is found; empty where it has no place for one.</param>
public sealed record PlannedSeen(string Exercise, string Weeks, string Letter, Location At);

/// <param name="Letter">As written.</param>
/// <param name="Heading">Its first row.</param>
public sealed record DosesSeen(string Letter, string Heading, Location At);

public sealed record CourseSeen(Series<(string Name, string Value)> Attributes, Location At);

public sealed record WeekPartSeen(string Weeks, string Text, Location At);

/// <param name="Session">Its number, as written.</param>
/// <param name="Weekdays">1 for Monday to 7 for Sunday, as written.</param>
/// <param name="Leads">Where the first link in it leads.</param>
public sealed record DueSeen(string Session, string Weekdays, string Leads, Location At);

/// <param name="Level">1 to 6.</param>
public sealed record HeadingSeen(int Level, string Text, Location At);

/// <param name="What">As it is called in a sentence: "a button".</param>
public sealed record Oddity(string What, Location At);
