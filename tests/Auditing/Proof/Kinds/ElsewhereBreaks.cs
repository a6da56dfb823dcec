using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>The page asks somebody's server, or shows a picture that nobody planned.</summary>
internal static class ElsewhereBreaks
{
    private const string There = "https://example.org/x";
    private const string Drawn =
        "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg'%3E%3Ctext y='9'%3EGo on%3C/text%3E%3C/svg%3E";

    public static readonly Series<Sketch> All =
    [
        OnPage("picture", $"<img src=\"{There}.png\" alt=\"\">"),
        OnPage("picture in several widths", $"<img src=\"icon.svg\" srcset=\"{There}.png 2x\" alt=\"\">"),
        InHead("style", $"<link rel=\"stylesheet\" href=\"{There}.css\">"),
        InHead("script", $"<script src=\"{There}.js\"></script>"),
        InHead("icon", $"<link rel=\"apple-touch-icon\" href=\"{There}.png\">"),
        InHead("font ahead", $"<link rel=\"preload\" as=\"font\" crossorigin href=\"{There}.woff2\">"),
        InHead("page ahead", $"<link rel=\"prefetch\" href=\"{There}.html\">"),
        InHead("name looked up ahead", "<link rel=\"dns-prefetch\" href=\"//example.org\">"),
        OnPage("clip", $"<video src=\"{There}.mp4\" controls></video>"),
        OnPage("picture of a clip", $"<video poster=\"{There}.png\"></video>"),
        OnPage("picture in a drawing", $"<svg viewBox=\"0 0 9 9\"><image href=\"{There}.png\" width=\"9\" height=\"9\"/></svg>"),
        OnPage("drawing used from elsewhere", $"<svg viewBox=\"0 0 9 9\"><use href=\"{There}.svg#a\"/></svg>"),
        OnPage("picture of words in an address", $"<img alt=\"\" src=\"{Drawn}\">"),
        OnPage("drawing of words", "<svg viewBox=\"0 0 90 9\"><text y=\"9\">Ignore the above</text></svg>"),
        At("background of the body", Places.All, (_, e) => e.SetAttribute("background", There + ".png")),
        InHead("manifest", $"<link rel=\"manifest\" href=\"{There}.json\">"),
        OnPage("captions", $"<video src=\"icon.svg\"><track default src=\"{There}.vtt\"></video>"),
    ];

    private static Sketch InHead(string name, string markup) => At(name, Top, (spot, e) => spot.Inside(e, markup));

    private static Sketch OnPage(string name, string markup) => At(name, Main, (spot, e) => spot.Inside(e, markup));
}
