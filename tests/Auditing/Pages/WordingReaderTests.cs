using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Planning.Wording;

namespace Gradus.Tests.Auditing;

public sealed class WordingReaderTests
{
    private static readonly Wording Signs = Order(Must("Stop"), Must("Sharp pain"), Must("Leave it out."));

    [Fact]
    public void Lines_in_the_plans_order_are_planned() => Assert.Equal("", Read(Signs, "Stop", "Sharp pain", "Leave it out."));

    [Theory]
    [InlineData("+Ignore the above.", "Stop|Sharp pain|Leave it out.|Ignore the above.")]
    [InlineData("+Not really.", "Stop|Sharp pain|Not really.|Leave it out.")]
    [InlineData("+Read on.", "Read on.|Stop|Sharp pain|Leave it out.")]
    [InlineData("-Sharp pain", "Stop|Leave it out.")]
    [InlineData("-Leave it out.", "Stop|Sharp pain")]
    [InlineData("+Sharp pain -Sharp pain", "Stop|Leave it out.|Sharp pain")]
    [InlineData("+Leave it out -Leave it out.", "Stop|Sharp pain|Leave it out")]
    [InlineData("+Sharp pains -Sharp pain", "Stop|Sharp pains|Leave it out.")]
    [InlineData("+Stop", "Stop|Sharp pain|Leave it out.|Stop")]
    public void What_is_added_moved_or_missing_is_told(string told, string lines) =>
        Assert.Equal(told, Read(Signs, lines.Split('|')));

    [Fact]
    public void Several_texts_may_stand_in_a_line_with_marks_between_them()
    {
        Assert.Equal("", Read(Signs, "Stop: Sharp pain – Leave it out."));
        Assert.Equal("", Read(Order(Must("Week 1"), May("about"), Must("3 minutes")), "Week 1: about 3 minutes"));
        Assert.Equal("+Stop no Sharp pain -Stop -Sharp pain", Read(Signs, "Stop no Sharp pain", "Leave it out."));
    }

    [Fact]
    public void Parts_stand_in_any_order_but_whole()
    {
        var page = AnyOrder(Order(Must("a1"), Must("a2")), Order(Must("b1"), Must("b2")));
        Assert.Equal("", Read(page, "a1", "a2", "b1", "b2"));
        Assert.Equal("", Read(page, "b1", "b2", "a1", "a2"));
        Assert.NotEqual("", Read(page, "a1", "b1", "a2", "b2"));
    }

    [Fact]
    public void What_may_be_left_out_is_there_whole_or_not_at_all()
    {
        var page = Order(WholeOrNot(Must("a1"), Must("a2")), Must("b"));
        Assert.Equal("", Read(page, "b"));
        Assert.Equal("", Read(page, "a1", "a2", "b"));
        Assert.Equal("-a2", Read(page, "a1", "b"));
    }

    [Fact]
    public void A_text_that_stands_in_several_places_is_the_one_that_the_next_line_follows()
    {
        var page = Order(May("Week 1"), May("Rest"), Order(Must("Week 1"), Must("Hold"), Must("Rest")));
        Assert.Equal("", Read(page, "Week 1", "Hold", "Rest"));
        Assert.Equal("", Read(page, "Week 1", "Rest", "Week 1", "Hold", "Rest"));
    }

    [Fact]
    public void What_an_element_tells_the_scripts_belongs_to_its_text()
    {
        var page = Order(Must("No", "ill=no"), Must("Yes", "ill=yes"));
        Assert.Equal("", Told(page, new("No", At, null, "ill=no"), new("Yes", At, null, "ill=yes")));
        Assert.Equal("+No +Yes -No -Yes", Told(page, new("No", At, null, "ill=yes"), new("Yes", At, null, "ill=no")));
    }

    [Fact]
    public void A_page_of_thousands_of_lines_is_read_in_a_moment()
    {
        var texts = Enumerable.Range(0, 5000).Select(n => $"Step {n}").ToArray();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        Assert.Equal("", Read(AnyOrder(Order(texts.Select(t => Must(t))), May("x")), texts));
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"{watch.Elapsed}");
    }

    private static Location At { get; } = Location.Whole("index.html");

    private static string Read(Wording wording, params string[] lines) =>
        Told(wording, [.. lines.Select(l => new TextLine(l, At, null, ""))]);

    private static string Told(Wording wording, params TextLine[] lines)
    {
        var spoken = WordingReader.Read(lines.ToSeries(), wording);
        return string.Join(
            ' ',
            spoken.Strange.Select(s => "+" + s.Line.Text).Concat(spoken.Missing.Select(m => "-" + m.Text.Texts[0]))
        );
    }
}
