using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class TimeAgainstTextTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Planted("another day in figures", "<time datetime=\"2026-12-14\">Monday 7 December 2026</time>"),
        Planted("another day in words", "<time datetime=\"2026-12-07\">Tuesday 8 December 2026</time>"),
        Planted("another weekday", "<time datetime=\"2026-12-07\">Tuesday 7 December 2026</time>"),
        Planted("a day without its weekday", "<time datetime=\"2026-12-07\">7 December 2026</time>"),
        Planted("the day and the hour", "<time datetime=\"2026-12-07T18:30\">Monday 7 December 2026</time>"),
        Planted("no figures", "<time>Monday 7 December 2026</time>"),
        Planted("a span with a fraction", "<time datetime=\"PT1.5S\">1 second</time>"),
        Planted("an empty span", "<time datetime=\"PTS\">0 seconds</time>"),
        Planted("a span with a sign", "<time datetime=\"PT-5S\">5 seconds</time>"),
    ];

    public static TheoryData<PlantedFault> All =>
        new(Faults.Append(Planted("the day in words alone", "Monday 7 December 2026") with { Rules = "" }));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_figures_and_in_words(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Planted(string kind, string instead) =>
        new(kind, "index.html", "<time datetime=\"2026-12-07\">Monday 7 December 2026</time>", instead, "time-against-text");
}
