using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>What the guided session needs beside the page that it plays.</summary>
/// <param name="Phrases">What its script says, as attributes; in braces what it fills in.</param>
/// <param name="Versions">This session and those that the client may do in its place.</param>
/// <param name="Regions">Where it may hurt.</param>
/// <param name="AskFirst">Whom to ask on a day without training.</param>
internal sealed record GuideView(
    Series<AttributeView> Phrases,
    Series<VersionView> Versions,
    Series<RegionView> Regions,
    string AskFirst
);

/// <param name="Kind">short, travel or flare; empty for the session of the programme.</param>
/// <param name="Lengths">Its seconds in each week, for a script: "1=610 2=727".</param>
internal sealed record VersionView(string Number, string Path, string Name, string Kind, string Lengths);
