using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>In the little practice a shoulder was read once at 140 degrees. Two raters' MDC90 of 8 degrees for the mean of two
/// tries (Kolber 2011, Physiother Theory Pract 27:176-84) makes 9.53 degrees either way for one try: 130 to 150, on a scale from
/// 125 to 155.</summary>
public sealed class RangeToldWrongTests
{
    private const string Page = "progress.html";
    private const string Open = "<svg viewBox=\"0 0 1000 40\" role=\"img\" aria-label=\"somewhere between 130° and 150°\">";
    private const string Error = "<rect x=\"166.7\" y=\"0\" width=\"666.7\" height=\"40\"></rect>";
    private const string Read = "<rect x=\"496\" y=\"0\" width=\"8\" height=\"40\"></rect>";
    private const string Whole = Open + Error + Read + "</svg>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("the error half as wide", Error, Replaced(Error, "666.7", "333.3")),
        Plant("the error three in a thousand short", Error, Replaced(Error, "666.7", "663.7")),
        Plant("the error in another place", Error, Replaced(Error, "166.7", "100")),
        Plant("what was read in another place", Read, Replaced(Read, "496", "700")),
        Plant("what was read three in a thousand further", Read, Replaced(Read, "496", "499")),
        Plant("what was read as a wide bar", Read, "<rect x=\"400\" y=\"0\" width=\"200\" height=\"40\"></rect>"),
        Plant("what was read missing", Read, ""),
        Plant("what was read hidden", Read, Replaced(Read, "<rect", "<rect hidden")),
        Plant("a mark that nobody set", Read, "<rect x=\"600\" y=\"0\" width=\"8\" height=\"40\"></rect>" + Read),
        Plant("the error moved away", Error, Replaced(Error, "<rect", "<rect transform=\"translate(90)\"")),
        Plant("the picture missing", Whole, ""),
        Plant("the picture twice", Whole, Whole + Whole),
        Plant("the picture cut short", Open, Replaced(Open, "0 0 1000 40", "0 0 600 40")),
        Plant("another range in its sentence", "between 130° and 150°\">", "between 139° and 141°\">"),
    ];

    public static TheoryData<PlantedFault> All =>
        new(
            Faults.Append(
                new(
                    "the same places of another length",
                    Page,
                    Whole,
                    Replaced(Open, "1000 40", "30 10")
                        + "<rect x=\"5\" y=\"0\" width=\"20\" height=\"10\"></rect>"
                        + "<rect x=\"14.9\" y=\"0\" width=\"0.2\" height=\"10\"></rect></svg>",
                    ""
                )
            )
        );

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_places_lengths_and_sentences(PlantedFault fault) => fault.MustBeFound();

    private static string Replaced(string text, string said, string instead) =>
        text.Replace(said, instead, StringComparison.Ordinal);

    private static PlantedFault Plant(string kind, string said, string instead) =>
        new(kind, Page, said, instead, "range-told-wrong");
}
