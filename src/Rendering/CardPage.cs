using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using QRCoder;

namespace Gradus.Rendering;

/// <summary>A card for the bag, A6 on paper: where the pages of a client stand, until when, and whom to call. It does not name
/// the client: who finds it learns no more than the address tells.</summary>
public static class CardPage
{
    private const string Style =
        "@page{size:105mm 148mm;margin:7mm}"
        + "body{background:#fff;color:#000;font:9pt/1.3 system-ui,sans-serif;margin:1rem auto;max-width:91mm}"
        + "h1{font-size:13pt;line-height:1.2;margin:0 0 1mm}p{margin:0 0 1.5mm}"
        + "svg{display:block;height:42mm;margin:0 auto;width:42mm}"
        + "code{display:block;font:8pt/1.3 ui-monospace,monospace;margin:0 0 1.5mm;overflow-wrap:anywhere}"
        + "aside{border:2px solid;margin:0 0 1.5mm;padding:1mm 1.5mm}"
        + "@media print{body{margin:0;max-width:none}}";

    /// <param name="address">Where the client's site is hosted, an absolute address.</param>
    public static string Of(Plan plan, string address)
    {
        var (words, publisher) = (plan.Words, plan.Publisher);
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Style)));
        string[] lines =
        [
            "<!doctype html>",
            $"<html lang=\"{words.Language}\" dir=\"{words.Direction}\">",
            "<head>",
            "<meta charset=\"utf-8\">",
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-"
                + $"{hash}'; base-uri 'none'; form-action 'none'\">",
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
            "<meta name=\"referrer\" content=\"no-referrer\">",
            "<meta name=\"robots\" content=\"noindex\">",
            $"<title>{Said(words.Say("card-title"))}</title>",
            $"<style>{Style}</style>",
            "</head>",
            "<body>",
            "<main>",
            $"<h1>{Said(words.Say("card-title"))}</h1>",
            $"<p>{Said(words.Say("card-scan"))}</p>",
            CodeOf(address, words.Say("card-code")),
            $"<code dir=\"ltr\">{Said(address)}</code>",
            $"<p><strong>{Said(plan.GoodUntil.Sentence)}</strong></p>",
            $"<aside>{Said(Prose.PlainOf(plan.Emergency.Sentence))}</aside>",
            $"<p>{Said(words.Say("coach-contact"))}: {Said(publisher.Coach)}, <bdi>{Said(publisher.Contact.Phone)}</bdi></p>",
            $"<p>{Said(words.Say("card-lost"))}</p>",
            "</main>",
            "</body>",
            "</html>",
        ];
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Black on white, whatever the page looks like: a camera needs the contrast. Level M of correcting errors, which a
    /// creased card needs (ISO/IEC 18004); the margin of four modules that a reader needs is in it.</summary>
    private static string CodeOf(string address, string name)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        var path = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows.Count; x++)
            {
                var from = x;
                while (x < rows.Count && rows[y][x])
                    x++;
                if (x > from)
                    path.Append(CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1h-{x - from}z");
            }
        }

        return string.Create(
            CultureInfo.InvariantCulture,
            $"<svg viewBox=\"0 0 {rows.Count} {rows.Count}\" role=\"img\" aria-label=\"{Said(name)}\" "
                + $"shape-rendering=\"crispEdges\">"
                + $"<path fill=\"#fff\" d=\"M0 0h{rows.Count}v{rows.Count}h-{rows.Count}z\"/><path d=\"{path}\"/></svg>"
        );
    }

    private static string Said(string text) => Html.Escape(text);
}
