using System.Net;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The page that asks for the passphrase of a locked site and then shows it. It is Gradus's own to the letter, whatever
/// the theme, and says nothing of the client: whoever finds the file learns only that something is locked in it.</summary>
public static partial class LockPage
{
    /// <summary>What stands before a locked text, and what behind it: an element that no browser runs.</summary>
    public const string Before = "<script type=\"text/plain\" id=\"locked\">",
        Behind = "</script>";

    /// <summary>The sentences that its script says, by their names there.</summary>
    private static readonly (string Name, string Key)[] Said =
    [
        ("empty", "locked-empty"),
        ("opening", "locked-opening"),
        ("wrong", "locked-wrong"),
        ("damaged", "locked-damaged"),
        ("cut", "locked-cut"),
        ("version", "locked-version"),
    ];

    private static readonly string Script = Compact.Script(BuiltIn.Text(Assembly.GetExecutingAssembly(), "lock.js"));

    private static readonly string Style = Compact.Style(BuiltIn.Text(Assembly.GetExecutingAssembly(), "lock.css"));

    /// <param name="inside">The page that is to be locked. Once it is shown, the policy of this page goes on holding beside its
    /// own, so that each script and style that stands in it is named here by its hash (CSP Level 3, 2.3.1).</param>
    public static string Of(Words words, string inside)
    {
        string[] lines =
        [
            "<!doctype html>",
            $"<html lang=\"{words.Language}\" dir=\"{words.Direction}\">",
            "<head>",
            "<meta charset=\"utf-8\">",
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
            $"<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy(inside)}\">",
            "<meta name=\"referrer\" content=\"no-referrer\">",
            "<meta name=\"robots\" content=\"noindex\">",
            $"<title>{Text("locked")}</title>",
            $"<style>{Style}</style>",
            $"<script>{Script}</script>",
            "</head>",
            "<body>",
            "<main>",
            $"<h1>{Text("locked")}</h1>",
            $"<p>{Text("locked-lead")}</p>",
            $"<form id=\"open\"{string.Concat(Said.Select(s => $" data-{s.Name}=\"{Text(s.Key)}\""))} hidden>",
            $"<label for=\"words\">{Text("locked-words")}</label>",
            "<input id=\"words\" type=\"text\" autocomplete=\"off\" autocapitalize=\"none\" spellcheck=\"false\">",
            $"<button id=\"do\" type=\"submit\">{Text("locked-open")}</button>",
            "</form>",
            $"<p id=\"said\" role=\"status\">{Text("locked-old")}</p>",
            "</main>",
            Before + Behind,
            "</body>",
            "</html>",
        ];
        return string.Join('\n', lines) + "\n";

        string Text(string key) => WebUtility.HtmlEncode(words.Say(key));
    }

    private static string Policy(string inside) =>
        "default-src 'none'; "
        + $"style-src {Hashes(Style, Styles().Matches(inside))}; script-src {Hashes(Script, Scripts().Matches(inside))}; "
        + "img-src data:; media-src data:; worker-src blob:; base-uri 'none'; form-action 'none'";

    private static string Hashes(string own, IEnumerable<Match> others) =>
        string.Join(
            ' ',
            others
                .Select(match => match.Groups[1].Value)
                .Prepend(own)
                .Distinct(StringComparer.Ordinal)
                .Select(text => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'")
        );

    [GeneratedRegex("<script[^>]*>(.*?)</script>", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Scripts();

    [GeneratedRegex("<style[^>]*>(.*?)</style>", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Styles();
}
