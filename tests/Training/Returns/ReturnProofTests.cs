using Gradus.Domain;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>A made year of 200 clients, each with a habit of their own, reviewed by the product and by a second implementation
/// that
/// was written from the words of the rule. A tenth of them in a plain run.</summary>
[Trait("Slow", "yes")]
public sealed class ReturnProofTests(ITestOutputHelper output)
{
    private static readonly string[] Kinds =
    [
        "week",
        "too little",
        "share",
        "load",
        "missed",
        "gap",
        "more sets",
        "move on: Met",
        "move on: NotMet",
        "move on: NotTold",
        "effort",
        "harder",
    ];

    private static readonly Practice Practice = MadeReturn.Practice.Read();

    private static readonly Training Training = Training.Of(Practice, Practice.Clients[0]);

    /// <summary>Who did so few sessions, and so hard, that one more would make a difference.</summary>
    private static readonly MadeReturn[] Edges =
    [
        MadeReturn.Of(5, 6, 7),
        MadeReturn.Of(5, 6, 7, 8),
        MadeReturn.Of(9),
        MadeReturn.Of(9, 10),
    ];

    private static readonly MadeReturn[] All = [.. Edges, .. Enumerable.Range(0, 200).Select(MadeReturn.Habit)];

    private static readonly MadeReturn[] Made = All[..(Edges.Length + LongProof.Cases(200))];

    [Fact]
    public void The_two_reviews_agree()
    {
        var spread = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var made in Made)
        {
            string[] second = [.. new SecondReturn(made, ReturnSlip.None).Everything().Order(StringComparer.Ordinal)];
            Assert.Equal(second, Said(made).Order(StringComparer.Ordinal));
            foreach (var line in second)
            foreach (var kind in Kinds.Where(k => line.StartsWith(k, StringComparison.Ordinal)))
                spread[kind] = spread.GetValueOrDefault(kind) + 1;
        }

        output.WriteLine($"{Made.Length} clients, {Made.Sum(m => m.Told.Length)} entries");
        foreach (var (kind, times) in spread)
            output.WriteLine($"{times, 8}  {kind}");
        Assert.Equal(Kinds.Order(StringComparer.Ordinal), spread.Keys);
    }

    public static TheoryData<string> Slips => [.. Enum.GetNames<ReturnSlip>().Where(s => s != nameof(ReturnSlip.None))];

    [Theory, MemberData(nameof(Slips))]
    public void A_mistake_of_this_kind_would_be_seen(string slip)
    {
        var wrong = Enum.Parse<ReturnSlip>(slip);
        Assert.Contains(Made, m =>
            !new SecondReturn(m, wrong).Everything().ToHashSet().SetEquals(new SecondReturn(m, ReturnSlip.None).Everything())
        );
    }

    private static IEnumerable<string> Said(MadeReturn made)
    {
        var client = Practice.Clients[0] with { Log = made.Log() };
        var came = ClientReturn.Of(Practice, client, Training, ToldLog.Start.AddDays(made.Today));
        foreach (var week in came.Weeks)
            yield return $"week {week.Number}: {week.Done} of {(week.Planned is { } planned ? $"{planned}" : "?")}, {week.Extra} "
                + $"extra, {week.BeforePlay} before play";
        foreach (var load in came.Loads)
        {
            var figures = FormattableString.Invariant($"{load.Monotony:0.000} {load.Strain:0}");
            yield return FormattableString.Invariant($"load {load.Number}: {load.Total:0} ")
                + (load.Why is { } why ? $"{why}" : figures);
        }

        if (came.TooLittle is { } little)
            yield return $"too little until week {little.Number}";
        if (came.Share is { } share)
            yield return $"share {share}";
        if (came.Missed is { } missed)
            yield return $"missed {missed.Sessions} until {Day(missed.Until)}";
        if (came.Gap is { } gap)
            yield return $"gap {gap.Days} from {Day(gap.From)}";
        foreach (var week in came.Sets.Where(s => s.IsMore).Select(s => s.Week).Distinct())
            yield return $"more sets in week {week}";
        foreach (var check in came.MoveOn)
            yield return $"move on: {check.Word}";
        if (came.Effort.Difference is { } points)
            yield return FormattableString.Invariant($"effort {points:0.0}");
        if (came.Effort.IsHarderThanMeant)
            yield return "harder than meant";
    }

    private static int Day(DateOnly day) => day.DayNumber - ToldLog.Start.DayNumber;
}
