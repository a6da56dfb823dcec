using System.Text.Json.Serialization;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>Which session it is today: every answer with every set of sessions that a coach may have written, held against the
/// rule in its own words.</summary>
public sealed class GuideChoiceTests(ITestOutputHelper output)
{
    private const int EaseOff = 2,
        Stop = 5;

    internal sealed record Place(string Where, string Side);

    internal sealed record Answers(int Pain, bool Worse, bool Ill, Place[] Sore);

    internal sealed record Written([property: JsonPropertyName("session")] int Number, string Kind, int? Seconds)
    {
        /// <summary>What each of its exercises loads.</summary>
        public string[][] Loads { get; init; } =
        [
            ["ankle left", "lower-back"],
        ];
    }

    internal sealed record Asked(Answers Answers, Written[] Versions, int Here)
    {
        public string Kind => "version";

        public object Limits => new { easeOff = EaseOff, stop = Stop };
    }

    private static IEnumerable<Asked> All() =>
        from versions in new Written[][]
        {
            [new(1, "", 1200)],
            [new(1, "", 1200), new(4, "short", 580)],
            [new(1, "", 1200), new(4, "short", 900), new(5, "flare", 700)],
            [new(1, "", 540), new(4, "short", 300)],
            [new(1, "", 1200), new(4, "short", null), new(5, "travel", 560)],
            [new(1, "", null), new(4, "short", 1000)],
            [
                new(1, "", 1200),
                new(4, "short", 580)
                {
                    Loads =
                    [
                        ["knee left"],
                        ["wrist right"],
                    ],
                },
            ],
            [
                new(1, "", 1200),
                new(4, "short", 580)
                {
                    Loads =
                    [
                        ["wrist right"],
                    ],
                },
                new(5, "flare", 300)
                {
                    Loads =
                    [
                        ["knee left", "knee right"],
                        ["knee left"],
                    ],
                },
            ],
            [
                new(1, "", 1200),
                new(4, "short", 580)
                {
                    Loads =
                    [
                        ["knee left"],
                        ["whole-body"],
                    ],
                },
            ],
            [new(1, "", 901), new(4, "short", 900), new(5, "short", 600), new(6, "flare", null)],
        }
        from here in versions
        from pain in Enumerable.Range(0, 11)
        from worse in new[] { false, true }
        from ill in new[] { false, true }
        from sore in new Place[][] { [], [new("knee", "left")], [new("knee", "right")], [new("wrist", "")] }
        select new Asked(new(pain, worse, ill, sore), versions, here.Number);

    [Fact]
    public async Task The_answers_choose_among_what_the_coach_wrote()
    {
        var cases = All().ToArray();
        var chosen = await Ask<string>(cases);
        var reasons = chosen.GroupBy(c => c.Split(' ')[1]).OrderBy(g => g.Key, StringComparer.Ordinal);
        output.WriteLine($"{cases.Length} cases: {string.Join(", ", reasons.Select(g => $"{g.Key} {g.Count()}"))}");
        Assert.Equal(cases.Select(Judged), chosen);
        Assert.All(["ill", "pain", "ease", "no-easier", "full"], why =>
            Assert.Contains(chosen, c => c.EndsWith(' ' + why, StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("answers.pain > limits.stop", "answers.pain >= limits.stop")]
    [InlineData("answers.pain > limits.easeOff", "answers.pain >= limits.easeOff")]
    [InlineData("|| answers.worse", "")]
    [InlineData("if (answers.ill)", "if (false)")]
    [InlineData(
        "first(left, still, 'flare') || first(left, still, 'short')",
        "first(left, still, 'short') || first(left, still, 'flare')"
    )]
    [InlineData("!sore.some(", "!sore.every(")]
    [InlineData("v.loads.some(", "v.loads.every(")]
    [InlineData("left.indexOf(own) < 0 ? null : own", "own")]
    [InlineData("v.seconds !== null", "true")]
    public async Task A_slip_is_seen(string written, string slip)
    {
        var cases = All().ToArray();
        var seen = (await Ask<string>(cases, Slip(written, slip))).Zip(cases.Select(Judged)).Count(c => c.First != c.Second);
        output.WriteLine($"seen in {seen} of {cases.Length}");
        Assert.InRange(seen, 1, cases.Length);
    }

    private static bool Hurts(string loaded, Place[] sore) =>
        sore.Any(s =>
            loaded == "whole-body"
            || loaded == s.Where
            || loaded == $"{s.Where} {s.Side}"
            || (s.Side.Length == 0 && loaded.StartsWith(s.Where + " ", StringComparison.Ordinal))
        );

    private static string Judged(Asked asked)
    {
        var (answers, here) = (asked.Answers, asked.Here);
        var inWeek = asked.Versions.Where(v => v.Seconds is not null).ToArray();
        var own = inWeek.FirstOrDefault(v => v.Number == here);
        if (answers.Ill)
            return "null ill";
        if (answers.Pain > Stop)
            return "null pain";
        if (answers.Pain > EaseOff || answers.Worse)
        {
            foreach (var kind in new[] { "flare", "short" })
                if (
                    inWeek
                        .Where(v => v.Kind == kind && v.Loads.Any(l => !l.Any(place => Hurts(place, answers.Sore))))
                        .OrderBy(v => v.Number == here ? 0 : 1)
                        .FirstOrDefault() is
                    { } easier
                )
                    return $"{easier.Number} ease";
            return "null no-easier";
        }

        return own is null ? "null no-easier" : $"{here} full";
    }
}
