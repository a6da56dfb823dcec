namespace Gradus.Tests.Auditing;

/// <summary>Mistakes in a programme's weeks and sessions: each has a finding with place and remedy, and the other client's site
/// is made all the same.</summary>
public sealed class BadWeeksTests
{
    private const string Calf = "- use: calf-press\nside: rear leg\nby-week:\n1: 2 x press 10 s at 50%";

    public static TheoryData<string, string, string, string> Mistakes =>
        new()
        {
            { "a week out of range", "2: 2 x hold 45 s", "3: 2 x hold 45 s", "value-wrong" },
            { "a lighter week out of range", "weeks: 2", "weeks: 2\nlighter: [9]", "value-wrong" },
            { "an unknown zone", "zone: Europe/London", "zone: Europe/Lodnon", "value-wrong" },
            { "a day that does not exist", "days: [Mon, Thu]", "days: [Mon, Thurs]", "value-wrong" },
            { "a date that does not exist", "start: 2026-12-07", "start: 2026-11-31", "value-wrong" },
            { "every zero days", "days: [Mon, Thu]", "days: every 0 days", "value-wrong" },
            { "a lighter first week", "weeks: 2", "weeks: 2\nlighter: [1]", "lighter-first-week" },
            {
                "a round with one use",
                Calf,
                "- rounds: 2\n  of:\n    - use: calf-press\n      side: rear leg\n      by-week: { 1: press 10 s at 50% }",
                "round-with-one-use"
            },
            { "a round without uses", Calf, "- rounds: 2\n  of: []", "" },
            { "no rounds at all", Calf, "- rounds: 0\n  of: [{ use: calf-press, side: rear leg }]", "value-wrong" },
            {
                "an alternate that names nothing",
                "sessions:",
                "alternate: [{ name: Away, instead-of: Nothing, kind: travel, do: [{ use: calf-press }] }]\nsessions:",
                "id-unknown"
            },
            {
                "an alternate of an unknown kind",
                "sessions:",
                "alternate: [{ name: Away, instead-of: Ankles, kind: holiday, do: [{ use: calf-press }] }]\nsessions:",
                "value-wrong"
            },
            { "a programme longer than two years", "weeks: 2", "weeks: 105", "value-wrong" },
            { "a stage that is none", "sessions:", "move-on: { gian: [no pain] }\nsessions:", "key-unknown" },
            { "a version that is none", "2: 2 x hold 45 s", "2: { use: hardest }", "value-wrong" },
            { "a version that the exercise has not", "1: 2 x press 10 s at 50%", "1: { use: harder }", "version-missing" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void It_is_found_and_the_other_client_is_untouched(string kind, string said, string instead, string rule)
    {
        var path = said.StartsWith("zone", StringComparison.Ordinal) ? "clients/tess/client.yaml" : "clients/tess/programme.md";
        var found = Trial.Of([
            Edit.Of(path, said.Split('\n').Select(l => "- " + l).Concat(instead.Split('\n').Select(l => "+ " + l))),
        ]);
        Assert.True(rule.Length == 0 || found.Any(f => f.Rule.Text == rule), $"{kind}: {Example.Written(found)}");
        Assert.All(found, f =>
            Assert.True(
                f.Client?.Text != "bram" && f.At.File.StartsWith("clients/tess/", StringComparison.Ordinal),
                $"{kind}: {f.At} {f.Message}"
            )
        );
        Assert.All(found, f => Assert.NotEmpty(f.Help));
    }
}
