using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>What the guided session needs beside the page that it plays.</summary>
/// <param name="Phrases">What its script says, as attributes; in braces what it fills in.</param>
/// <param name="Versions">This session and those that the client may do in its place.</param>
/// <param name="Regions">Where it may hurt.</param>
/// <param name="Ill">Whether something about the client's health is new.</param>
/// <param name="TodayIll">The same as a sentence that may be true.</param>
/// <param name="EaseOff">The last way on where it hurts.</param>
/// <param name="AfterAlarm">What must be before the next session.</param>
/// <param name="StillTold">That what was stopped no longer hurts, and the coach knows of it.</param>
/// <param name="StillUntold">The same, where the coach does not.</param>
/// <param name="AskFirst">Whom to ask on a day without training.</param>
/// <param name="Efforts">How hard it was, to choose from.</param>
/// <param name="Tries">What stands beside each number that is measured.</param>
/// <param name="MeasureNote">How to measure; empty where no exercise of the programme measures anything.</param>
internal sealed record GuideView(
    Series<AttributeView> Phrases,
    Series<VersionView> Versions,
    Series<RegionView> Regions,
    string Ill,
    string TodayIll,
    string EaseOff,
    string AfterAlarm,
    string AskFirst,
    string StillTold,
    string StillUntold,
    Series<EffortView> Efforts,
    string MeasureNote,
    Series<string> Tries
);

/// <param name="Words">What so much effort is like; the number alone where it stands between two that say it.</param>
internal sealed record EffortView(string Number, string Words);

/// <param name="Kind">short, travel or flare; empty for the session of the programme.</param>
/// <param name="Lengths">Its seconds in each week, for a script: "1=610 2=727".</param>
/// <param name="Loads">What each of its exercises loads, for a script: "ankle-rock=ankle:left,ankle:right".</param>
internal sealed record VersionView(string Number, string Path, string Name, string Kind, string Lengths, string Loads);
