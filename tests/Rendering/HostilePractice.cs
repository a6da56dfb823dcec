using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>A practice with one client in which whoever writes the texts is told what to write in each place. The people of the
/// Eel Weir épée club are invented.</summary>
/// <param name="text">What to write, from the name of the place; it stands as it is in a text, and in quotation marks in a
/// header.</param>
internal sealed partial class HostilePractice(Func<string, string> text)
{
    /// <summary>What nobody means well by. A page that ran any of it would set <c>touched</c>, show a dialog or ask for
    /// something.</summary>
    public const string Payload =
        "<script>touched=1</script> \"><img src=x onerror=touched=2> ' onmouseover='touched=3' autofocus "
        + "onfocus='touched=4 % raw % $(touched=5) "
        + "</title></style></textarea> <!-- --> <svg/onload=touched=6> &lt;b&gt; &#60;i&#62; &amp;amp; "
        + "javascript:touched=7 data:text/html;touched=8 thgir left שלום \U0001F93A "
        + "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsvorstandsvorsitzender";

    private static readonly string LongWord = new('w', 180);

    /// <summary>As a reader of Markdown sees it: there, references to characters stand for the characters.</summary>
    private static readonly string PayloadInText = Payload.Replace(
        "&lt;b&gt; &#60;i&#62; &amp;amp;",
        "<b> <i> &amp;",
        StringComparison.Ordinal
    );

    /// <summary>A picture of one white pixel, PNG.</summary>
    private static readonly byte[] Pixel = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsTj2FAAAAABJRU5ErkJggg=="
    );

    [GeneratedRegex("\"⟦(?<place>[^⟧]+)⟧\"|⟦(?<free>[^⟧]+)⟧", RegexOptions.CultureInvariant)]
    private static partial Regex Place();

    [GeneratedRegex("^(?<key>[a-z][a-z0-9-]*): [^{\n]+$", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex PlainPhrase();

    /// <summary>Every place with its own name, and nothing else.</summary>
    public static readonly HostilePractice Harmless = new(place =>
        place == "email" ? Named(place) + "@example.org" : Named(place)
    );

    public static readonly HostilePractice Hostile = new(place => Shown(place).InHeader);

    /// <summary>Texts four times as long as the longest that a coach writes, and words that no line of a phone holds. A key of
    /// YAML has at most 1,024 characters, and a catalogue 256 KiB.</summary>
    public static readonly HostilePractice Endless = new(place =>
        place == "email" ? LongWord + "@example.org"
        : place is "weapon arm" or "free arm" or "front leg" or "rear leg" ? $"{Named(place)} {LongWord}"
        : string.Concat(
            Enumerable.Repeat(
                $"{Named(place)} and what else there is to say about it at length; ",
                place.EndsWith(" phrase", StringComparison.Ordinal) ? 1 : 9
            )
        )
            + LongWord
            + string.Join('-', Enumerable.Repeat("up-and-down", place.EndsWith(" phrase", StringComparison.Ordinal) ? 12 : 16))
    );

    /// <summary>The name of every place that is written in.</summary>
    public static Series<string> Places =>
        Files().SelectMany(f => Place().Matches(f.Text)).Select(NameOf).Distinct().Order(StringComparer.Ordinal).ToSeries();

    /// <summary>What the client reads of a hostile place: in a header what was written, in a text what Markdown makes of it. No
    /// place holds a brace, which reading refuses; an address for letters with more in it than this is refused on the finished
    /// page.</summary>
    public static (string InHeader, string InText) Shown(string place)
    {
        var payload = place == "email" ? "'\"onmouseover=\"touched=3\"<script>&amp;@example.org" : Payload;
        return ($"{Named(place)}{(place == "email" ? "" : " ")}{payload}", $"{Named(place)} {PayloadInText}");
    }

    /// <summary>What stands in a place for certain, and nowhere else.</summary>
    public static string Named(string place) => place == "email" ? "email-of-ours" : place + " of ours";

    public SourceFolder Folder =>
        SourceFolder.Of(
            Files()
                .Select(f => KeyValuePair.Create(f.Path, Encoding.UTF8.GetBytes(Place().Replace(f.Text, Written))))
                .Append(KeyValuePair.Create("exercises/calf.png", Pixel))
        );

    /// <summary>The plan of its one client, and what reading found, of which nothing may be an error.</summary>
    public (Practice Practice, Plan Plan, Findings Findings) Read()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(Folder, findings).Practice;
        Assert.DoesNotContain(findings, f => f.Level == Level.Error);
        Assert.NotNull(practice);
        return (practice, Planned.For(practice, practice.Clients.Single()), findings);
    }

    private string Written(Match match) =>
        match.Value[0] != '"'
            ? text(NameOf(match))
            : "\""
                + text(NameOf(match))
                    .Replace("\\", "\\\\", StringComparison.Ordinal)
                    .Replace("\"", "\\\"", StringComparison.Ordinal)
                + "\"";

    private static string NameOf(Match match) =>
        match.Groups["place"].Success ? match.Groups["place"].Value : match.Groups["free"].Value;

    private static IEnumerable<(string Path, string Text)> Files() => HostileFiles.All.Append(("words/en.yaml", OwnWords()));

    /// <summary>Every phrase of the catalogue that needs no filling, in the practice's own words.</summary>
    private static string OwnWords() =>
        string.Concat(
            PlainPhrase()
                .Matches(File.ReadAllText(Repository.Path("src", "Reading", "Words", "en.yaml")))
                .Select(m => $"{m.Groups["key"].Value}: \"⟦{m.Groups["key"].Value} phrase⟧\"\n")
        );
}
