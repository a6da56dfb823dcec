using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>One client's site in one rendition, made and judged, before anything of it is said or handed over.</summary>
/// <param name="Key">A hash of all that it and the findings come from.</param>
/// <param name="Site">Null where it stands as it was made before, or an error keeps it from being made.</param>
/// <param name="Standing">The record of what stands as it was made before; null where something was made anew.</param>
/// <param name="Lines">The lines of its pages that findings point at.</param>
internal sealed record MadeSite(
    Rendition Rendition,
    string Key,
    Site? Site,
    SiteRecord? Standing,
    Series<Finding> Found,
    Series<FoundLine> Lines
)
{
    /// <summary>Whether an error was found, so that it is not handed over.</summary>
    public bool IsWrong => Found.Any(f => f.Level == Level.Error);
}
