using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What is other than in the edition before; it stands on the pages as long as this edition is the latest.</summary>
/// <param name="Heading">"New since 7 December 2026", the day of the edition before.</param>
/// <param name="Lines">In plain words, at least one.</param>
public sealed record PlannedNews(string Heading, Series<PlannedNewsLine> Lines)
{
    /// <summary>What concerns the page at that path: all of it for home.</summary>
    public IEnumerable<string> On(string path) =>
        Lines.Where(l => path == PagePath.Home || l.Pages.Contains(path)).Select(l => l.Said);
}

/// <param name="Pages">The paths of the pages that it touches, home left out.</param>
public sealed record PlannedNewsLine(string Said, Series<string> Pages);
