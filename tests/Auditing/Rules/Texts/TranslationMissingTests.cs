using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>A coach who writes German, and clients who read English, from the text to the audited site.</summary>
[Trait("Slow", "yes")]
public sealed class TranslationMissingTests
{
    private const string Nobody = "";
    private const string Both = "ida odile";

    [Fact]
    public void An_english_reader_s_pages_carry_the_english_texts_and_none_of_the_german()
    {
        var (published, findings) = Published(GermanClub.Translated);
        Assert.Empty(
            findings
                .InOrder()
                .Where(f => f.Rule.Text is not ("growth-unfinished" or "demand-unmeasured"))
                .Select(f => $"{f.At} {f.Rule} {f.Message}")
        );
        Assert.Equal(Both, string.Join(' ', published.Select(s => s.Client)));
        var odile = published[1].Pages.ToArray();
        Assert.All(odile, page =>
            Assert.DoesNotContain(GermanClub.German, german => page.Html.Contains(german, StringComparison.Ordinal))
        );
        var session = odile.Single(p => p.Path == "session-1.html").Html;
        Assert.All(
            [
                "A stabbing pain",
                "End the exercise.",
                "A cramp in the foot",
                "Let go until it has gone.",
                "Something to hold on to",
                "Stand beside the wall.",
                "A pull in the calf",
            ],
            english => Assert.Contains(english, session, StringComparison.Ordinal)
        );
        Assert.Contains("<a href=\"exercise-fersenheben.html\">Heel raise</a>", session, StringComparison.Ordinal);
        Assert.Contains(
            "<a href=\"exercise-fersenheben.html\">heel raise</a>",
            odile.Single(p => p.Path == "exercise-wadendehnung.html").Html,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "<title>Heel raise",
            odile.Single(p => p.Path == "exercise-fersenheben.html").Html,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("cautions/krampf.en.md", "odile", "cautions/krampf.md error translation-missing [odile]")]
    [InlineData("cautions/festhalten.en.md", "odile", "cautions/festhalten.md error translation-missing [odile]")]
    [InlineData(
        "cautions/stechen.en.md",
        Both,
        "cautions/stechen.md error translation-missing [ida]|cautions/stechen.md error translation-missing [odile]"
    )]
    [InlineData("exercises/fersenheben.en.md", Nobody, "clients/odile/programme.md:11:14 warning translation-missing [odile]")]
    public void Whose_caution_is_not_translated_is_blocked_and_nobody_else(string missing, string blocked, string found)
    {
        var (published, findings) = Published(GermanClub.Translated.Without(missing));
        Assert.Equal(blocked, BlockedBeside(published));
        Assert.Equal(
            found.Split('|'),
            findings
                .InOrder()
                .Where(f => f.Rule.Text == "translation-missing")
                .Select(f => $"{f.At} {f.Level.ToString().ToLowerInvariant()} {f.Rule} [{f.Client}]")
        );
    }

    [Theory]
    [InlineData("cautions/krampf.en.md", "no header", "odile")]
    [InlineData("cautions/krampf.en.md", "---\ntitle: A cramp\n---\n", "odile")]
    [InlineData("cautions/krampf.en.md", "---\ntitle: A cramp\nkind: stop\n---\nLet go.\n", "odile")]
    [InlineData("cautions/krampf.en.md", "---\ntitle: A cramp\n---\nLet go, as in [this](https:no).\n", "odile")]
    [InlineData("cautions/krampf.en.md", "---\ntitle: A cramp\n---\nLet go, as in [this](fersenhebn.md).\n", "odile")]
    [InlineData("cautions/krampf.en.md", "---\ntitle: A cramp\n---\n![A cramp](cramp.png)\n", "odile")]
    [InlineData("cautions/stechen.en.md", "no header", Both)]
    [InlineData("exercises/fersenheben.en.md", "no header", "odile")]
    [InlineData("exercises/fersenheben.en.md", "---\ntitle: Heel raise\n---\n## Do\nStay up for {press}.\n", "odile")]
    [InlineData("exercises/fersenheben.en.md", "---\ntitle: Heel raise\n---\nFor {holds}.\n## Do\nStay up.\n", "odile")]
    [InlineData("exercises/wadendehnung.en.md", "---\ntitle: Stretch\n---\n## Do\nStay for {effort}.\n", Both)]
    [InlineData("cautions/krampf.ga.md", "no header", Nobody)]
    [InlineData("exercises/fersenheben.ga.md", "---\ntitle: Sála\n---\n## Do\nFan {press}.\n", Nobody)]
    [InlineData("cautions/krmpf.en.md", "---\ntitle: A cramp\n---\nLet go.\n", Both)]
    [InlineData("cautions/krampf.EN.md", "---\ntitle: A cramp\n---\nLet go.\n", Both)]
    public void A_translation_with_an_error_blocks_those_who_would_read_it_and_planning_never_throws(
        string path,
        string text,
        string blocked
    )
    {
        var (published, findings) = Published(GermanClub.Translated.With(path, text));
        Assert.Contains(findings, f => f.Level == Level.Error && f.At.File == path);
        Assert.Equal(blocked, BlockedBeside(published));
    }

    [Fact]
    public void A_page_with_the_german_cautions_is_not_hers()
    {
        var plan = GermanClub.Translated.Plan("odile");
        var german = SiteRenderer.Render(
            GermanClub.Translated.Edit("practice.md", "language: de", "language: en").Plan("odile"),
            ThemeFolder.Plain(),
            []
        );
        Assert.NotNull(german);
        Assert.Equal(
            plan.Cautions.Select(c => $"This page tells somebody to move, but the caution '{c.Title}' is not on it."),
            RuleBook
                .Audit(plan, german, [])
                .Where(f =>
                    f.At.File == "session-1.html"
                    && f.Rule.Text == "page-without-cautions"
                    && f.Message.Contains("the caution", StringComparison.Ordinal)
                )
                .Select(f => f.Message)
        );
    }

    [Fact]
    public void Another_client_named_in_a_translation_is_found_on_the_pages_that_carry_it()
    {
        var (_, findings) = Published(
            GermanClub.Translated.With("cautions/krampf.en.md", "---\ntitle: A cramp\n---\nIda Wherry had it too.\n")
        );
        Assert.Equal(["odile"], findings.Where(f => f.Rule.Text == "other-client-named").Select(f => f.Client?.Text).Distinct());
        var (_, unread) = Published(
            GermanClub.Translated.With("cautions/krampf.ga.md", "---\ntitle: Crampa\n---\nIda Wherry.\n")
        );
        Assert.DoesNotContain(unread, f => f.Rule.Text == "other-client-named");
    }

    [Fact]
    public void German_prose_is_not_held_against_the_dose_and_its_english_translation_is()
    {
        const string Wrong = "Stay there for 90 seconds.";
        var german = GermanClub.Translated.Edit("exercises/wadendehnung.md", "Bleib so", "90 seconds, bleib so");
        Assert.DoesNotContain(Published(german).Findings, f => f.Rule.Text == "prose-against-dose");
        var english = GermanClub.Translated.Edit("exercises/wadendehnung.en.md", "Stay there for {hold}.", Wrong);
        Assert.Equal(
            ["exercises/wadendehnung.en.md"],
            Published(english).Findings.Where(f => f.Rule.Text == "prose-against-dose").Select(f => f.At.File)
        );
        var weeks = GermanClub
            .Translated.Edit("exercises/wadendehnung.en.md", "{hold}", "30 to 60 seconds")
            .Member("ida", ["- use: wadendehnung\n  by-week: { 1: 2 x hold 20 s }"], weeks: 2);
        Assert.Equal(
            [("exercises/wadendehnung.en.md", "ida")],
            Published(weeks)
                .Findings.Where(f => f.Rule.Text == "prose-against-dose")
                .Select(f => (f.At.File, f.Client?.Text ?? ""))
        );
    }

    private static string BlockedBeside(Series<Site> published) =>
        string.Join(' ', Both.Split(' ').Except(published.Select(s => s.Client.Text)));

    private static (Series<Site> Sites, Findings Findings) Published(Gradus.Tests.Reading.LittlePractice texts)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(texts.Folder, findings).Practice;
        Assert.NotNull(practice);
        findings.AddRange(
            RuleBook.Check(practice, Planned.Trainings(practice), LittlePractice.Today, findings.All(f => f.Level != Level.Error))
        );
        var reach = Reach.Of(practice);
        var sites = new List<Site>();
        foreach (var client in practice.Clients.Where(c => !findings.Block(c.Id, reach)))
        {
            var plan = Planned.For(practice, client);
            var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
            Assert.NotNull(site);
            findings.AddRange(RuleBook.Audit(plan, site, practice.Clients.Where(c => c.Id != client.Id).Select(c => c.Name)));
            sites.Add(site);
        }

        return (sites.ToSeries(), findings);
    }
}
