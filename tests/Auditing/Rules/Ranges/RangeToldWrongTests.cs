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
    private const string Read = "<rect x=\"495\" y=\"0\" width=\"10\" height=\"40\"></rect>";
    private const string Whole = Open + Error + Read + "</svg>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("the error half as wide", Error, Replaced(Error, "666.7", "333.3")),
        Plant("the error three in a thousand short", Error, Replaced(Error, "666.7", "663.7")),
        Plant("the error in another place", Error, Replaced(Error, "166.7", "100")),
        Plant("what was read in another place", Read, Replaced(Read, "495", "700")),
        Plant("what was read three in a thousand further", Read, Replaced(Read, "495", "498")),
        Plant("what was read as a wide bar", Read, "<rect x=\"400\" y=\"0\" width=\"200\" height=\"40\"></rect>"),
        Plant("what was read missing", Read, ""),
        Plant("what was read hidden", Read, Replaced(Read, "<rect", "<rect hidden")),
        Plant("a mark that nobody set", Read, "<rect x=\"600\" y=\"0\" width=\"8\" height=\"40\"></rect>" + Read),
        Plant("the error moved away", Error, Replaced(Error, "<rect", "<rect transform=\"translate(90)\"")),
        Plant("the picture missing", Whole, ""),
        Plant("the picture twice", Whole, Whole + Whole),
        Plant("the picture cut short", Open, Replaced(Open, "0 0 1000 40", "0 0 600 40")),
        Plant("a picture without a length", Open, Replaced(Open, "1000 40", "0 40")),
        Plant("what was read as a line without a width", Read, "<rect x=\"500\" y=\"0\" width=\"0\" height=\"40\"></rect>"),
        Plant("another range in its sentence", "between 130° and 150°\">", "between 139° and 141°\">"),
    ];

    /// <summary>A line may be two in a hundred wide, and lie one in a thousand beside its place.</summary>
    public static readonly Series<PlantedFault> Fine =
    [
        Drawn("the same places of another length", "30 10", "x=\"5\" y=\"0\" width=\"20\"", "x=\"14.9\" y=\"0\" width=\"0.2\""),
        Drawn("the same places of the length one", "1 1", "x=\"0.1667\" width=\"0.6667\"", "x=\"0.495\" width=\"0.01\""),
        Plant(
            "what was read as wide as a line may be",
            Read,
            Replaced(Read, "x=\"495\" y=\"0\" width=\"10\"", "x=\"490\" y=\"0\" width=\"20\"")
        ) with
        {
            Rules = "",
        },
        Plant("what was read one in a thousand further", Read, Replaced(Read, "495", "496")) with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_places_lengths_and_sentences(PlantedFault fault) => fault.MustBeFound();

    /// <summary>Of a rotation measured with an inclinometer an error from day to day is published for one rater, and none for two
    /// (Johnson 2012, J Athl Train 47(1):52-60). Who measured first is not written: that reading has no picture beside the
    /// other.</summary>
    [Fact]
    public void A_reading_without_an_error_has_no_picture_and_none_is_missed()
    {
        const string Columns = "date,motion,side,mode,value,unit,instrument";
        const string Ankle = "2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer";
        const string Shoulder = "2026-11-20,shoulder flexion,left,active,140,deg,inclinometer";
        const string Rotation = "thoracic rotation,left,active,50,deg,inclinometer";
        var found = Trial.Of([
            Edit.Of(
                "clients/tess/readings.csv",
                [
                    $"- {Columns}",
                    $"- {Ankle}",
                    $"- {Shoulder}",
                    $"+ {Columns},by",
                    $"+ {Ankle},",
                    $"+ {Shoulder},",
                    $"+ 2026-11-20,{Rotation},",
                    $"+ 2026-12-04,{Rotation},Ottoline Marsh",
                ]
            ),
        ]);
        Assert.DoesNotContain(found, f => f.Rule.Text == "range-told-wrong" || f.Level == Level.Error);
    }

    private static PlantedFault Drawn(string kind, string size, string error, string read) =>
        Plant(
            kind,
            Whole,
            $"{Replaced(Open, "1000 40", size)}<rect {error} height=\"1\"></rect><rect {read} height=\"1\"></rect></svg>"
        ) with
        {
            Rules = "",
        };

    private static string Replaced(string text, string said, string instead) =>
        text.Replace(said, instead, StringComparison.Ordinal);

    private static PlantedFault Plant(string kind, string said, string instead) =>
        new(kind, Page, said, instead, "range-told-wrong");
}
