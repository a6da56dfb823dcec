using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class AcceptTests
{
    private static readonly Location At = new("accepted.yaml", 1, 9);
    private static readonly DateOnly Day = new(2026, 12, 7);
    private static readonly string[] Nothing = [];

    [Fact]
    public void What_fits_the_rule_and_the_file_is_taken_away_for_every_place_in_it() =>
        Assert.Equal(
            ["warning heading-skipped b.html"],
            Said(
                [
                    Found("heading-skipped", Level.Warning, "a.html"),
                    Found("heading-skipped", Level.Warning, "a.html", 9),
                    Found("heading-skipped", Level.Warning, "b.html"),
                ],
                Accepted("heading-skipped", "a.html")
            )
        );

    [Theory]
    [InlineData("heading-skipped", "A.html")]
    [InlineData("heading-skipped", "./a.html")]
    [InlineData("label-missing", "b.html")]
    public void Anything_else_stands(string rule, string file) =>
        Assert.Contains(
            "warning heading-skipped a.html",
            Said([Found("heading-skipped", Level.Warning, "a.html")], Accepted(rule, file))
        );

    [Fact]
    public void A_note_is_taken_away_too() =>
        Assert.Equal(
            Nothing,
            Said([Found("caution-unused", Level.Note, "cautions/a.md")], Accepted("caution-unused", "cautions/a.md"))
        );

    [Fact]
    public void A_rule_with_notes_and_errors_is_refused_where_one_is_an_error()
    {
        Finding[] found =
        [
            Found("dose-outside-envelope", Level.Error, "clients/a/programme.md"),
            Found("dose-outside-envelope", Level.Note, "clients/a/programme.md", 9),
        ];
        Assert.Equal(
            [
                "error dose-outside-envelope clients/a/programme.md",
                "note dose-outside-envelope clients/a/programme.md",
                "error acceptance-refused accepted.yaml",
            ],
            Said(found, Accepted("dose-outside-envelope", "clients/a/programme.md"))
        );
        Assert.Equal(Nothing, Said(found[1..], Accepted("dose-outside-envelope", "clients/a/programme.md")));
    }

    [Fact]
    public void No_rule_that_is_an_error_alone_can_be_accepted()
    {
        var rules = RuleBook
            .Pages()
            .Where(p => p.Text.Contains("\nLevel: error. ", StringComparison.Ordinal))
            .Select(p => p.Rule.Text)
            .ToArray();
        Assert.True(rules.Length > 20);
        Assert.All(rules, rule => Assert.Equal(["error acceptance-refused accepted.yaml"], Said([], Accepted(rule, "a.html"))));
    }

    [Fact]
    public void Every_other_rule_can_be_accepted()
    {
        var rules = RuleBook
            .Pages()
            .Where(p => !p.Text.Contains("\nLevel: error. ", StringComparison.Ordinal))
            .Select(p => p.Rule.Text)
            .ToArray();
        Assert.True(rules.Length > 10);
        Assert.All(rules, rule => Assert.Equal(Nothing, Said([Found(rule, Level.Warning, "a.html")], Accepted(rule, "a.html"))));
    }

    [Fact]
    public void After_its_last_day_the_warning_is_said_again() =>
        Assert.Equal(
            ["warning heading-skipped a.html", "warning acceptance-ended accepted.yaml"],
            Said(
                [Found("heading-skipped", Level.Warning, "a.html")],
                Accepted("heading-skipped", "a.html") with
                {
                    Until = Day.AddDays(-1),
                }
            )
        );

    [Fact]
    public void One_that_fits_nothing_is_named_unless_it_is_for_a_finished_page()
    {
        Assert.Equal(["note acceptance-unused accepted.yaml"], Said([], Accepted("caution-unused", "cautions/a.md")));
        Assert.Equal(Nothing, Said([], Accepted("heading-skipped", "session-1.html")));
    }

    private static Acceptance Accepted(string rule, string file) =>
        new(new(rule), file, null, "It is meant so.", "Ottoline Marsh", Day, At);

    private static Finding Found(string rule, Level level, string file, int line = 1) =>
        new(new(rule), level, null, new(file, line, 1), "x", "y");

    private static IEnumerable<string> Said(Finding[] found, Acceptance accepted) =>
        RuleBook
            .Accept(found, [accepted], RuleBook.Pages(), Day)
            .Select(f => $"{f.Level.ToString().ToLowerInvariant()} {f.Rule} {f.At.File}");
}
