using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class PolicyWeakTests
{
    private const string Page = "index.html";
    private const string Script = "document.title = 'x'";

    private static readonly string Meta = From("<meta http-equiv", ">");

    /// <summary>From the policy to where the body begins.</summary>
    private static readonly string Head = From("<meta http-equiv", "<body>");

    private static readonly string Hash =
        "'sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Script))) + "'";

    public static readonly Series<PlantedFault> Faults =
    [
        Meant("none at all", ""),
        Meant("one that only reports", Meta.Replace("Security-Policy", "Security-Policy-Report-Only", StringComparison.Ordinal)),
        new("in the body", Page, Head, Head.Replace(Meta, "", StringComparison.Ordinal) + Meta, "policy-weak"),
        Meant("behind a style", $"<link rel='stylesheet' href='look.css'>{Meta}"),
        Meant("behind a picture's address", $"<link rel='icon' href='look.css'>{Meta}"),
        Lets("default-src 'none'", ""),
        Lets("default-src 'none'", "default-src 'self'"),
        Lets("default-src 'none'", "default-src *"),
        Lets("base-uri 'none'", ""),
        Lets("base-uri 'none'", "base-uri 'self'"),
        Lets("form-action 'none'", ""),
        Lets("form-action 'none'", "form-action https://example.org"),
        Lets("script-src 'self'", "script-src 'self' 'unsafe-inline'"),
        Lets("script-src 'self'", "script-src 'UNSAFE-EVAL'"),
        Lets("script-src 'self'", "script-src data:"),
        Lets("script-src 'self'", "script-src blob:"),
        Lets("script-src 'self'", "script-src https:"),
        Lets("script-src 'self'", "script-src example.org"),
        Lets("script-src 'self'", "script-src 'nonce-abc'"),
        Lets("script-src 'self'", "script-src 'strict-dynamic' 'sha256-abc'"),
        Lets("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
        Lets("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
        Lets("style-src 'self'", "style-src-attr 'unsafe-inline'"),
        Lets("img-src 'self'", "img-src *"),
        Lets("img-src 'self'", "img-src https:"),
        Lets("img-src 'self'", "img-src 'self' example.org"),
        Lets("img-src 'self'", "object-src 'self'"),
        Lets("img-src 'self'", "frame-src 'self'"),
        Lets("img-src 'self'", "child-src blob:"),
        Lets("img-src 'self'", "connect-src https://example.org"),
        Lets("img-src 'self'", "connect-src *"),
        Lets("img-src 'self'", "connect-src ws:"),
        Lets("img-src 'self'", "worker-src data:"),
        Lets("img-src 'self'", "manifest-src https:"),
        Lets("img-src 'self'", "media-src http:"),
        Lets("img-src 'self'", "font-src blob:"),
        Lets("img-src 'self'", "img-src 'none' 'self'"),
        Lets("img-src 'self'", "report-uri https://example.org/"),
        Lets("img-src 'self'", "unheard-of-src 'self'"),
        Lets("img-src 'self'", "img-src\t*"),
        Lets("script-src 'self'", "SCRIPT-SRC 'self' *"),
        Lets("default-src 'none'", "default-src *; default-src 'none'"),
        Inline(Script, "'self'"),
        Inline(Script, "'sha256-AAAA'"),
        Inline(Script + " ", Hash),
        Inline(Script, Hash.Replace("sha256", "sha384", StringComparison.Ordinal)),
        Inline(Script, "'none'"),
        Inline(Script, "'self'; style-src-elem " + Hash),
        Inline(Script, $"{Hash}; script-src-elem 'self'"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Lets("img-src 'self'", "img-src 'self' data: blob:") with
        {
            Rules = "",
        },
        Lets(
            "img-src 'self'",
            "worker-src 'self' blob:; manifest-src 'self'; connect-src 'self'; media-src data:; font-src 'self' data:"
        ) with
        {
            Rules = "",
        },
        Lets("img-src 'self'", "object-src 'none'; connect-src 'none'; frame-src 'none'") with
        {
            Rules = "",
        },
        Lets("img-src 'self'", "IMG-SRC 'SELF'; upgrade-insecure-requests") with
        {
            Rules = "",
        },
        Lets("default-src 'none'", "default-src 'none'; default-src *") with
        {
            Rules = "",
        },
        Lets("default-src 'none'", "default-src") with
        {
            Rules = "",
        },
        Inline(Script, Hash) with
        {
            Rules = "script-or-style-from-author",
        },
        Inline(Script, $"'self' {Hash}") with
        {
            Rules = "script-or-style-from-author",
        },
        Inline(Script, $"'none'; script-src-elem {Hash}") with
        {
            Rules = "script-or-style-from-author",
        },
        new("data in a script element", Page, "</body>", "<script type='application/json'>{}</script></body>", ""),
        Meant("two of them", Meta + Meta) with
        {
            Rules = "",
        },
        Meant("in capitals", Meta.Replace("http-equiv", "HTTP-EQUIV", StringComparison.Ordinal)) with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_it_lets_something_in(PlantedFault fault) => fault.MustBeFound();

    private static string From(string begins, string ends)
    {
        var html = FinishedSite.Site.Pages.Single(p => p.Path == Page).Html;
        var from = html.IndexOf(begins, StringComparison.Ordinal);
        return html[from..(html.IndexOf(ends, from, StringComparison.Ordinal) + ends.Length)];
    }

    private static PlantedFault Meant(string kind, string instead) => new(kind, Page, Meta, instead, "policy-weak");

    private static PlantedFault Lets(string said, string instead) =>
        new(
            $"{said} → {instead}",
            Page,
            Meta,
            Meta.Replace(Written(said), Written(instead), StringComparison.Ordinal),
            "policy-weak"
        );

    private static PlantedFault Inline(string script, string sources) =>
        new(
            $"{script} with {sources}",
            Page,
            Meta,
            Meta.Replace(Written("script-src 'self'"), Written($"script-src {sources}"), StringComparison.Ordinal)
                + $"<script>{script}</script>",
            "policy-weak script-or-style-from-author"
        );

    private static string Written(string policy) => policy.Replace("'", "&#39;", StringComparison.Ordinal);
}
