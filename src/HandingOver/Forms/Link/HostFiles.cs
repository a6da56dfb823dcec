using System.Text;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>What a host is told of all the sites on it. It names none of them: whoever asks for these files learns no
/// address.</summary>
internal static class HostFiles
{
    /// <summary>Sent with each page, beside the page's own policy: the address goes to nobody, is not kept by what lies
    /// between, is in no list of a search engine, and is shown in no frame.</summary>
    private static readonly (string Name, string Value)[] Headers =
    [
        ("Referrer-Policy", "no-referrer"),
        ("X-Robots-Tag", "noindex, nofollow, noarchive"),
        ("Cache-Control", "private, no-cache"),
        ("Content-Security-Policy", "frame-ancestors 'none'; base-uri 'none'; form-action 'none'"),
        ("X-Content-Type-Options", "nosniff"),
        ("Permissions-Policy", "camera=(), microphone=(), geolocation=()"),
        ("Strict-Transport-Security", "max-age=31536000"),
    ];

    private static readonly (string Path, string Text)[] All =
    [
        // The two ways in which common static hosts take headers.
        ("_headers", $"/*\n{string.Concat(Headers.Select(h => $"  {h.Name}: {h.Value}\n"))}"),
        (
            ".htaccess",
            "Options -Indexes\n<IfModule mod_headers.c>\n"
                + string.Concat(Headers.Select(h => $"Header always set {h.Name} \"{h.Value}\"\n"))
                + "</IfModule>\n"
        ),
        ("robots.txt", "User-agent: *\nDisallow: /\n"),
        // A host that shows what is in a folder shows this in its place.
        (
            PagePath.Home,
            "<!doctype html>\n<html lang=\"en\">\n<meta charset=\"utf-8\">\n<meta name=\"robots\" content=\"noindex\">\n"
                + "<title>Nothing here</title>\n<p>There is nothing at this address.\n"
        ),
    ];

    public static IEnumerable<string> Names => All.Select(file => file.Path);

    /// <summary>Puts them into a folder; those that stand there as they are stay the same files.</summary>
    public static void Put(string folder)
    {
        foreach (var (path, text) in All)
        {
            var places = Places.In(folder, path);
            var bytes = Encoding.UTF8.GetBytes(text);
            InTheWay.RefuseLink(places.Site);
            if (!NewFile.Stands(places, bytes))
                places.Replace(() => NewFile.Build(places, bytes), NewFile.Put);
        }
    }
}
