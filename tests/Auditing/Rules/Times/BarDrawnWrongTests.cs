using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>In the little practice week 1 has 80 s of work, 50 s of rest and 20 s of moving about: of 1000 these are 533.3, 333.3
/// and 133.3.</summary>
public sealed class BarDrawnWrongTests
{
    private const string Page = "weeks.html";
    private const string Label = "Ankles, Week 1: work 1 min 20 s, rest 50 s, moving about 20 s.";
    private const string Open = "<svg viewBox=\"0 0 1000 40\" role=\"img\" aria-label=\"" + Label + "\">";
    private const string Work = "<rect x=\"0.0\" y=\"0\" width=\"533.3\" height=\"40\"></rect>";
    private const string Rest = "<rect x=\"533.3\" y=\"0\" width=\"333.3\" height=\"40\"></rect>";
    private const string Moving = "<rect x=\"866.7\" y=\"0\" width=\"133.3\" height=\"40\"></rect>";
    private const string Whole = Open + Work + Rest + Moving + "</svg>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a part too long", Rest, Rest.Replace("width=\"333.3\"", "width=\"433.3\"", StringComparison.Ordinal)),
        Plant(
            "a part too short by two in a thousand",
            Work,
            Work.Replace("width=\"533.3\"", "width=\"530.3\"", StringComparison.Ordinal)
        ),
        Plant("a part in the wrong place", Moving, Moving.Replace("866.7", "800.0", StringComparison.Ordinal)),
        Plant("a part on top of another", Rest, Rest.Replace("x=\"533.3\"", "x=\"0.0\"", StringComparison.Ordinal)),
        Plant("a part missing", Moving, ""),
        Plant("a part twice", Moving, Moving + Moving),
        Plant("a part of no length more", Moving, Moving + "<rect x=\"1000\" y=\"0\" width=\"0\" height=\"40\"></rect>"),
        Plant("work and rest swapped", Work + Rest, Rest + Work),
        Plant(
            "the lengths of work and rest swapped",
            Work + Rest,
            "<rect x=\"0.0\" y=\"0\" width=\"333.3\" height=\"40\"></rect><rect x=\"333.3\" y=\"0\" width=\"533.3\" "
                + "height=\"40\"></rect>"
        ),
        Plant(
            "all parts of the same length",
            Work + Rest + Moving,
            "<rect x=\"0\" width=\"10\"></rect><rect x=\"10\" width=\"10\"></rect><rect x=\"20\" width=\"10\"></rect>"
        ),
        Plant(
            "no part has a length",
            Work + Rest + Moving,
            "<rect x=\"0\" width=\"0\"></rect><rect x=\"0\" width=\"0\"></rect><rect x=\"0\" width=\"0\"></rect>"
        ),
        Plant("a length that is missing", Rest, "<rect x=\"533.3\" y=\"0\" height=\"40\"></rect>"),
        Plant("a length that is no number", Rest, Rest.Replace("width=\"333.3\"", "width=\"a third\"", StringComparison.Ordinal)),
        Plant("a length with a comma", Rest, Rest.Replace("width=\"333.3\"", "width=\"333,3\"", StringComparison.Ordinal)),
        Plant("a place that is missing", Rest, "<rect y=\"0\" width=\"333.3\" height=\"40\"></rect>"),
        Plant("a picture missing", Whole, ""),
        Plant("a picture hidden", Open, Open.Replace("<svg", "<svg hidden", StringComparison.Ordinal)),
        Plant("a picture inside something hidden", Whole, $"<div hidden>{Whole}</div>"),
        Plant("a picture of another kind", Whole, Whole.Replace("rect", "circle", StringComparison.Ordinal)),
        Plant(
            "another figure in its sentence",
            "rest 50 s, moving about 20 s.\"><rect x=\"0.0\" y=\"0\" width=\"533.3\"",
            "rest 40 s, moving about 20 s.\"><rect x=\"0.0\" y=\"0\" width=\"533.3\""
        ),
        Plant(
            "the sentence of another week",
            "aria-label=\"Ankles, Week 1: work 1 min 20 s",
            "aria-label=\"Ankles, Week 3: work 1 min 20 s"
        ),
        Plant(
            "the pictures of two weeks under each other's sentence",
            Work + Rest + Moving,
            "<rect x=\"0.0\" width=\"611.1\"></rect><rect x=\"611.1\" width=\"277.8\"></rect><rect x=\"888.9\" "
                + "width=\"111.1\"></rect>"
        ),
        Plant("a bar shorter than its picture", Open, Open.Replace("0 0 1000 40", "0 0 2000 40", StringComparison.Ordinal)),
        Plant("a picture cut short", Open, Open.Replace("0 0 1000 40", "0 0 400 40", StringComparison.Ordinal)),
        Plant("a picture without its size", Open, Open.Replace(" viewBox=\"0 0 1000 40\"", "", StringComparison.Ordinal)),
        Plant(
            "a bar that begins later",
            Work + Rest + Moving,
            "<rect x=\"40\" width=\"533.3\" height=\"40\"></rect><rect x=\"573.3\" width=\"333.3\" "
                + "height=\"40\"></rect><rect x=\"906.7\" width=\"133.3\" height=\"40\"></rect>"
        ),
        Plant("parts in a group that may be moved", Work + Rest + Moving, $"<g>{Work}{Rest}{Moving}</g>"),
        Plant("a part hidden", Rest, Rest.Replace("<rect", "<rect hidden", StringComparison.Ordinal)),
        Plant("a part not displayed", Rest, Rest.Replace("<rect", "<rect display=\"none\"", StringComparison.Ordinal)),
        Plant("a part without ink", Rest, Rest.Replace("<rect", "<rect fill=\"none\"", StringComparison.Ordinal)),
        Plant("a part moved", Rest, Rest.Replace("<rect", "<rect transform=\"translate(90)\"", StringComparison.Ordinal)),
        Plant("a part without a height", Rest, Rest.Replace("height=\"40\"", "height=\"0\"", StringComparison.Ordinal)),
        Plant("a part below the picture", Rest, Rest.Replace("y=\"0\"", "y=\"60\"", StringComparison.Ordinal)),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant(
            "the same shares of another length",
            Whole,
            Open.Replace("1000 40", "150 20", StringComparison.Ordinal)
                + "<rect x=\"0\" width=\"80\" height=\"20\"></rect><rect x=\"80\" width=\"50\" "
                + "height=\"20\"></rect><rect x=\"130\" width=\"20\" height=\"20\"></rect></svg>",
            ""
        ),
        Plant(
            "another drawing without bars",
            Whole,
            $"<svg viewBox=\"0 0 10 10\" role=\"img\" aria-label=\"Ankles\"><circle r=\"5\"></circle></svg>{Whole}",
            ""
        ),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_lengths_places_and_sentences(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string said, string instead, string rules = "bar-drawn-wrong") =>
        new(kind, Page, said, instead, rules);
}
