using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A page for the coach alone, opened from the disk: it asks for no other file and has no script; light, dark and
/// printed.</summary>
internal static class CoachPage
{
    private static readonly string Shared = BuiltIn.Text(typeof(CoachPage).Assembly, "CoachPage.css");

    private const string Notice =
        "<header>\n<p class=\"private\"><strong>For the coach alone.</strong> This page names clients and "
        + "says what concerns their health. Send it to nobody, and delete it when you are done with it.</p>\n</header>\n";

    /// <param name="style">What the page needs beside what all of them have.</param>
    /// <param name="main">Markup that stands below the heading.</param>
    /// <param name="namesClients">Whether it says something of clients, and has to be kept as their files are.</param>
    public static string Of(string title, string style, string main, bool namesClients = true)
    {
        var all = Shared + style;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(all)));
        return new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-")
            .Append(hash)
            .Append("'; base-uri 'none'; form-action 'none'\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<meta name=\"referrer\" content=\"no-referrer\">\n<meta name=\"robots\" content=\"noindex\">\n")
            .Append($"<title>{Escape(title)}</title>\n<style>{all}</style>\n</head>\n")
            .Append($"<body>\n{(namesClients ? Notice : "")}<main>\n<h1>{Escape(title)}</h1>\n")
            .Append(main)
            .Append("</main>\n</body>\n</html>\n")
            .ToString();
    }

    /// <summary>Text as it may stand in an element or in a quoted attribute.</summary>
    public static string Escape(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);
}
