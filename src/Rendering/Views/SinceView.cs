using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>What is other than in the edition before, as far as it touches the page.</summary>
/// <param name="Heading">"New since 7 December 2026"; empty where nothing is said.</param>
/// <param name="Lines">Empty likewise.</param>
internal sealed record SinceView(string Heading, Series<string> Lines)
{
    public static SinceView Of(Plan plan, string path) =>
        plan.News is { } news && news.On(path).ToSeries() is { Count: > 0 } lines ? new(news.Heading, lines) : new("", []);
}
