using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.Tests.Reading;

/// <summary>The pictures of start and end of an exercise, from its header to the page.</summary>
public sealed class PairTests
{
    private const string File = "exercises/heel-sink.md";

    [Fact]
    public void An_exercise_names_pictures_of_its_start_and_its_end()
    {
        var exercise = Exercise(Both());
        Assert.Equal(
            [("exercises/start.jpg", "The heel is up"), ("exercises/The end.png", "The heel is down")],
            exercise.Text.Pair.OfType<Inline.Picture>().Select(p => (p.Path, p.Shows))
        );
    }

    [Theory]
    [InlineData("start: start.jpg", "value-wrong")]
    [InlineData("start: { picture: start.jpg }", "key-missing")]
    [InlineData("start: { shows: The heel is up }", "key-missing")]
    [InlineData("start: { picture: start.jpg, shows: The heel is up, alt: x }", "key-unknown")]
    [InlineData("start: { picture: strat.jpg, shows: The heel is up }", "picture-missing")]
    [InlineData("start: { picture: start.mp4, shows: The heel sinks }", "picture-missing")]
    [InlineData("end: { picture: ../../start.jpg, shows: The heel is up }", "address-refused")]
    public void What_is_wrong_is_said_at_its_line(string written, string fault)
    {
        var finding = Assert.Single(Headed(written).Findings());
        Assert.Equal((fault, 3), (finding.Rule.Text, finding.At.Line));
        Assert.Equal(Level.Error, finding.Level);
    }

    [Theory]
    [InlineData(true, true, "Start End")]
    [InlineData(true, false, "Start")]
    [InlineData(false, true, "End")]
    [InlineData(false, false, "")]
    public void The_page_shows_the_pair_or_one_alone_behind_the_cautions(bool start, bool end, string labels)
    {
        var practice = (start, end) switch
        {
            (true, true) => Both(),
            (true, false) => Headed(Start),
            (false, true) => Headed(End),
            _ => LittlePractice.Golden,
        };
        var page = PageOf(practice);
        var shown = System.Text.RegularExpressions.Regex.Matches(page, "<figure><figcaption>(\\w+)</figcaption><picture>");
        Assert.Equal(labels, string.Join(' ', shown.Select(s => s.Groups[1].Value)));
        Assert.Equal(labels.Length > 0, page.Contains("class=\"pair\"", StringComparison.Ordinal));
        if (labels.Length > 0)
            Assert.True(
                page.IndexOf("class=\"pair\"", StringComparison.Ordinal)
                    > page.LastIndexOf("class=\"cautions", StringComparison.Ordinal)
            );
    }

    [Fact]
    public void A_use_in_a_session_has_the_pair_too()
    {
        var plan = PlanOf(Both());
        var use = plan.Sessions.SelectMany(s => s.Uses).First(u => u.Exercise.Text == "heel-sink");
        Assert.Equal(2, use.Text.Pair.OfType<Inline.Picture>().Count(p => p.Sizes.Count > 0));
    }

    [Fact]
    public void Nothing_is_found_on_the_pages_of_whoever_has_a_pair()
    {
        var practice = Both().Read();
        var client = practice.Clients.First(c => Planned.Uses(practice, c).Any(u => u.Exercise.Id.Text == "heel-sink"));
        var (plan, findings) = (Planned.For(practice, client), new Findings());
        foreach (var form in new[] { Rendition.Pages, Rendition.OneFile })
        {
            var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings, form);
            Assert.NotNull(site);
            findings.AddRange(Gradus.Auditing.RuleBook.Audit(plan, site, []));
        }

        Assert.Empty(findings.Where(f => f.Level == Level.Error).Select(f => $"{f.At} {f.Message}"));
    }

    [Fact]
    public void A_translation_has_its_own_words_for_the_same_pictures()
    {
        var club = GermanClub
            .Translated.Edit("exercises/wadendehnung.md", "signs:", "start: { picture: vor.jpg, shows: Vor der Wand }\nsigns:")
            .With("exercises/vor.jpg", PictureTests.Jpeg);
        Assert.Equal("Vor der Wand", ShownTo("ida", club));
        Assert.Equal("Before the wall", ShownTo("ida", InEnglish(club)));
        Assert.Equal(1, Missing(club));
        Assert.Equal(0, Missing(InEnglish(club)));

        static LittlePractice InEnglish(LittlePractice club) =>
            club.Edit(
                "exercises/wadendehnung.en.md",
                "title: Calf stretch",
                "title: Calf stretch\nstart: { shows: Before the wall }"
            );

        static string ShownTo(string client, LittlePractice club) =>
            club.Plan(client).Exercises[0].Text.Start is Inline.Picture picture ? picture.Shows : "";

        static int Missing(LittlePractice club)
        {
            var practice = club.Read();
            return Gradus
                .Auditing.RuleBook.Check(practice, Planned.Trainings(practice), Gradus.Tests.Auditing.LittlePractice.Today, true)
                .Count(f => f.Message.Contains("its picture 'start'", StringComparison.Ordinal) && f.Client?.Text == "ida");
        }
    }

    private const string Start = "start: { picture: start.jpg, shows: The heel is up }",
        End = "end: { picture: The end.png, shows: The heel is down }";

    private static LittlePractice Both() => Headed(Start + "\n" + End);

    private static LittlePractice Headed(string keys)
    {
        var text = LittlePractice.Golden[File].Split('\n', 3);
        return LittlePractice
            .Golden.With(File, $"{text[0]}\n{text[1]}\n{keys}\n{text[2]}")
            .With("exercises/start.jpg", PictureTests.Jpeg)
            .With("exercises/The end.png", PictureTests.Png);
    }

    private static Exercise Exercise(LittlePractice practice) => practice.Read().Exercises.First(e => e.Id.Text == "heel-sink");

    private static Plan PlanOf(LittlePractice practice)
    {
        var read = practice.Read();
        return Planned.For(read, read.Clients.First(c => Planned.Uses(read, c).Any(u => u.Exercise.Id.Text == "heel-sink")));
    }

    private static string PageOf(LittlePractice practice)
    {
        var (plan, findings) = (PlanOf(practice), new Findings());
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        Assert.Empty(findings);
        return site.Pages.First(p => p.Path == "exercise-heel-sink.html").Html;
    }
}
