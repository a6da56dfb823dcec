using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>A script that is built from small sources of a theme, which a browser loads as one file: over file:// it loads no
/// modules. This is the one list of them.</summary>
/// <param name="Path">What it is called in a site.</param>
/// <param name="Sources">Files of the theme, each after those it needs; none of them goes into a site by itself.</param>
public sealed record BuiltScript(string Path, Series<string> Sources)
{
    /// <summary>What every page does by itself: its last day, this week, the log.</summary>
    public static readonly BuiltScript Page = new(
        "page.js",
        [
            "good-until.js",
            "log.js",
            "this-week.js",
            "week-figures.js",
            "what-was-done.js",
            "show-week.js",
            "phrases.js",
            "log-cells.js",
            "log-file.js",
            "log-message.js",
            "log-page.js",
        ]
    );

    /// <summary>The guided session.</summary>
    public static readonly BuiltScript Session = new(
        "session.js",
        [
            "guide-loads.js",
            "guide-steps.js",
            "guide-cues.js",
            "guide-choice.js",
            "guide-read.js",
            "guide-figure.js",
            "guide-hurts.js",
            "guide-watch.js",
            "guide-sound.js",
            "guide-alarm.js",
            "guide-before.js",
            "guide-skip.js",
            "guide-play.js",
            "guide-measure.js",
            "guide-end.js",
            "guide-page.js",
        ]
    );

    /// <summary>For pages on a host.</summary>
    public static readonly BuiltScript Hosted = new("hosted.js", ["keep-offline.js"]);

    /// <summary>The service worker that <see cref="Hosted"/> registers. Without it nobody reads the list of the files.</summary>
    public static readonly BuiltScript Worker = new("offline.js", ["offline.js"]);

    /// <summary>Stands in an intake sheet and goes into no site.</summary>
    public static readonly BuiltScript Sheet = new("intake-sheet.js", ["intake-sheet.js"]);

    /// <summary>Where all pages are one file, which has no host.</summary>
    public static readonly Series<BuiltScript> InOne = [Page, Session];

    /// <summary>What a page loads, in this order.</summary>
    public static readonly Series<BuiltScript> OfPages = [.. InOne, Hosted];

    /// <summary>Every script that a page asks for where its site has it, in this order.</summary>
    public static readonly Series<string> Asked = [Page.Path, GuideFile.Path, Session.Path, Hosted.Path];

    /// <summary>Every file that a site has of them.</summary>
    public static readonly Series<BuiltScript> OfSites = [.. OfPages, Worker];

    public static readonly Series<BuiltScript> All = [.. OfSites, Sheet];

    /// <summary>The script itself; empty where a theme brings none of its sources.</summary>
    /// <param name="find">The text of a source; empty where there is none.</param>
    public string Text(Func<string, string> find) => string.Join('\n', Sources.Select(find).Where(text => text.Length > 0));
}
