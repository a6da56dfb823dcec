using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>A page that is put into its frame.</summary>
/// <param name="Kind">What its template has: "home", "before", "weeks", "session" or "exercise".</param>
/// <param name="Content">What its template made.</param>
internal sealed record FramedView(string Path, string Id, string Kind, string Title, Html Content);

/// <summary>All pages in one, with the style and the scripts in the page itself.</summary>
/// <param name="Figures">Each figure once, for what is shown elsewhere.</param>
internal sealed record AllPagesView(Html Style, Series<Html> Scripts, Series<FramedView> Pages, Html Figures);
