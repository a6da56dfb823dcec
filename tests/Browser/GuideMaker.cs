using Gradus.Tests.Benchmarks;

namespace Gradus.Tests.Browser;

/// <summary>Made sessions, and what somebody presses on the way: pauses, steps back and forward, a stop because it hurts; some
/// with exercises that are left out from the start.</summary>
internal static class GuideMaker
{
    /// <summary>Everything happens at a quarter of a second.</summary>
    public const int Grid = 250;

    private static readonly string[] Acts =
    [
        "pause",
        "go",
        "go",
        "go",
        "back",
        "forward",
        "longer",
        "softer",
        "ease",
        "stop",
        "end",
    ];
    private static readonly string[][] Loads =
    [
        ["knee:work"],
        ["knee:other", "hip:work"],
        ["wrist:work"],
        ["lower-back"],
        ["shoulder:work", "lower-back"],
        [],
    ];

    public static IEnumerable<GuideScripts.Led> Cases(int count)
    {
        var draws = new Draws(20261208);
        for (var i = 0; i < count; i++)
            yield return Made(draws);
    }

    private static GuideScripts.Led Made(Draws draws)
    {
        var steps = Enumerable.Range(0, draws.From(1, 4)).SelectMany(n => Exercise(draws, n)).ToArray();
        var span = steps.Sum(s => s.Seconds) * 1000;
        var acts = Enumerable
            .Range(0, draws.From(0, 8))
            .Select(_ => new GuideScripts.Act(
                draws.Below((span / Grid) + 40) * Grid,
                Acts[draws.Below(draws.Below(3) == 0 ? Acts.Length : 8)]
            ))
            .ToList();
        var wait = draws.Below(2) == 0;

        // Somebody who is waited for comes sooner or later.
        if (wait)
            acts.AddRange(Enumerable.Range(1, 30).Select(n => new GuideScripts.Act(n * span / 30 / Grid * Grid, "go")));
        string[]? learnt =
            draws.Below(3) == 0 ? [.. steps.Select(s => s.Exercise).Distinct().Where(_ => draws.Below(2) == 0)] : null;
        string[]? @out =
            draws.Below(3) == 0 ? [.. steps.Select(s => s.Exercise).Distinct().Where(_ => draws.Below(3) == 0)] : null;
        var ticks = new List<int>();
        for (var at = 0; at < span + (60 * 1000); at += Grid * draws.From(1, draws.Below(4) == 0 ? 59 : 2))
            ticks.Add(at);
        ticks.Add(span + (60 * 1000));
        return new(
            steps,
            wait,
            learnt,
            [.. ticks],
            [new(0, "start"), .. acts.OrderBy(a => a.At).DistinctBy(a => a.At).Where(a => a.At > 0)],
            @out
        );
    }

    private static IEnumerable<GuideScripts.Piece> Exercise(Draws draws, int number)
    {
        var (name, loads) = ($"exercise-{number}", Loads[draws.Below(Loads.Length)]);
        var sides = (string[])(
            draws.Below(3) switch
            {
                0 => [""],
                1 => ["right"],
                _ => ["left", "right"],
            }
        );
        if (number > 0)
            yield return Piece("transition", sides[0], draws.From(5, 30));
        yield return Piece("get-ready", sides[0], 5);
        foreach (var (index, side) in sides.Index())
        {
            if (index > 0)
                yield return Piece("switch", side, 5);
            for (var set = draws.From(1, 2); set > 0; set--)
            {
                yield return Piece("hold", side, draws.From(1, 45));
                if (set > 1)
                    yield return Piece("rest", side, draws.From(5, 30));
            }
        }

        GuideScripts.Piece Piece(string kind, string side, int seconds) => new(kind, name, side, seconds, loads);
    }
}
