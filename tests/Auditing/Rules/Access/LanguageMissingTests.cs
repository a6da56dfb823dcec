using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class LanguageMissingTests
{
    private const string Title = "<title>Tess Harrowby&#39;s exercises</title>";

    public static readonly Series<PlantedFault> Faults =
    [
        Language("<html>"),
        Language("<html lang>"),
        Language("<html lang=''>"),
        Language("<html lang='de'>"),
        Language("<html lang='english'>"),
        Language("<html xml:lang='en'>"),
        Language("<!-- <html lang='en'> -->"),
        Language("<html lang='en' dir='rtl'>"),
        Language("<html lang='en' dir='auto'>"),
        Language("<html lang='en' dir=''>"),
        new("no title", "index.html", Title, "", "language-missing"),
        new("an empty title", "session-1.html", Title, "<title> \n</title>", "language-missing"),
        new("a title that is no title of the page", "session-1.html", Title, "<svg><title>x</title></svg>", "language-missing"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Language("<html lang='EN' dir='LTR'>") with
        {
            Rules = "",
        },
        Language("<html lang='en-IE'>") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_on_any_page(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Language(string html) => new(html, "index.html", "<html lang=\"en\">", html, "language-missing");
}
