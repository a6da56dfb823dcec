using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class LinkBrokenOnPageTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        To("session-9.html"),
        To("#nowhere"),
        To("before-you-start.html#nowhere"),
        To("../bram/index.html"),
        To("/session-1.html"),
        To("SESSION-1.html"),
        To("session-1.html?week=2"),
        To("javascript:alert(1)"),
        To(" JavaScript:alert(1)"),
        To("java\tscript:alert(1)"),
        To("&#106;avascript:alert(1)"),
        To("data:text/html,hello"),
        To("http://example.org/"),
        To("file:///etc/hosts"),
        To("ftp://example.org/"),
        To("//example.org/"),
        To("vbscript:x"),
        To("#"),
        To("weeks.html"),
        To("https://example.org/"),
        To("mailto:coach@example.org"),
        To("tel:+441632960001"),
        To("look.css"),
        Saying("tel:998", "999"),
        Saying("tel:+441632960001", "ring me within 24 hours"),
        Saying("tel:+441632960002", "+44 1632 960001"),
        Saying("TEL:112", "Call 999"),
        Saying("mailto:other@example.org", "coach@example.org"),
    ];

    public static readonly Series<PlantedFault> Fine = [To("session-1.html") with { Rules = "" }];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_wherever_it_leads(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Saying(string address, string text) =>
        new(
            $"{address} behind {text}",
            "index.html",
            "</body>",
            $"<a href=\"{address}\">{text}</a></body>",
            "link-broken-on-page"
        );

    private static PlantedFault To(string address) =>
        new($"a link to '{address}'", "index.html", "href=\"session-1.html\"", $"href=\"{address}\"", "link-broken-on-page");
}
