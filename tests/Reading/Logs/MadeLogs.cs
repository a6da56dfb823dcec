using CsCheck;
using Gradus.Domain;

namespace Gradus.Tests.Reading.Logs;

/// <summary>Entries of every kind, and texts that are hard to carry.</summary>
internal static class MadeLogs
{
    public static readonly Gen<string> Text = Gen.OneOf(
        Gen.Const(""),
        Gen.OneOf("=1+1", "+44", "-5 kg", "@SUM(A1)", "'=x", "''", "a, b", "a \"quoted\" word", "two\nlines", "two\r\nlines"),
        Gen.OneOf("\t=1", "épée, 3 €", "\"", ",", ";", "'", "\r", " blank ", "date,session", "\uFEFF", "\u202Etfel", "𝄞", "\0"),
        Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.OneOf('\n', '\r', '"', ',', ';', '\t', 'é', '\u00A0')), 0, 12]
    );

    private static readonly Gen<LoggedPain?> Pain = Gen.Select(
        Gen.Int[-1, 10],
        Gen.Int[-1, Region.All.Count - 1],
        Gen.Int[0, 2],
        (level, region, side) =>
            level < 0 && region < 0
                ? null
                : new LoggedPain(
                    level < 0 ? null : level,
                    region < 0 ? null : Region.All[region],
                    region < 0 || side == 2 || !Region.All[region].IsSided ? null : (Side)side
                )
    );

    private static readonly Gen<LoggedExercise> Exercise = Gen.Select(
            Gen.OneOf("plank", "ankle-rock", "wall-lean", "a1-b"),
            Gen.Int[-1, 1],
            Maybe(Gen.Int[0, 1000]),
            Maybe(Gen.Int[0, 9999]),
            Text,
            Pain,
            Stop,
            Gen.Decimal[-9m, 99m].Select(d => Math.Round(d, 1)).Array[0, 3]
        )
        .Select(t => new LoggedExercise(
            new(t.Item1),
            t.Item2 < 0 ? null : (Side)t.Item2,
            t.Item3,
            t.Item4,
            t.Item5,
            t.Item6,
            t.Item7.Stopped,
            t.Item7.For,
            t.Item8.ToSeries()
        ));

    private static Gen<(bool Stopped, StopReason? For)> Stop =>
        Gen.Int[-2, 8].Select(n => (n > -2, n < 0 ? (StopReason?)null : (StopReason)n));

    private static readonly Gen<LogOutcome> Outcome = Gen.OneOf(
        Gen.Const((LogOutcome)new LogOutcome.Done()),
        Gen.Int[-1, 8].Select(n => (LogOutcome)new LogOutcome.EndedEarly(n < 0 ? null : (StopReason)n)),
        Gen.Int[-1, 4].Select(n => (LogOutcome)new LogOutcome.NotToday(n < 0 ? null : (NotTodayReason)n))
    );

    /// <summary>A few days, sessions and editions, so that many tell of the same session.</summary>
    public static readonly Gen<LogEntry> Entry = Gen.Select(
            Gen.Select(Gen.Int[0, 5], Maybe(Gen.Int[0, 3]), Gen.Int[1, 3], Gen.Int[1, 9], Gen.Int[-1, 2]),
            Gen.Select(Maybe(Gen.Int[0, 1]), Maybe(Gen.Int[0, 1]), Outcome, Maybe(Gen.Int[0, 99]), Maybe(Gen.Int[0, 99])),
            Gen.Select(Maybe(Gen.Int[0, 1440]), Maybe(Gen.Int[0, 10]), Pain, Pain, Pain),
            Gen.Select(Gen.Int[-1, 1], Gen.Int[-3, 7], Exercise.Array[0, 4], Text)
        )
        .Select(t =>
        {
            var ((day, start, session, week, kind), (course, edition, outcome, done, planned), numbers, rest) = t;
            var (minutes, effort, before, during, morning) = numbers;
            var (worse, alarm, exercises, note) = rest;
            return new LogEntry(
                new DateOnly(2026, 12, 7).AddDays(day),
                start is { } s ? new(7 + s, 5 * s) : null,
                session,
                week,
                kind < 0 ? null : (AlternateKind)kind,
                course is { } c ? $"9b1e5c07aa41d2f{c}" : null,
                edition is { } e ? $"3f0c2a9{e}" : null,
                outcome,
                done,
                planned,
                minutes / 4m,
                effort,
                before,
                during,
                morning,
                worse < 0 ? null : worse == 1,
                alarm < 0 ? null : (RedFlag)alarm,
                exercises.ToSeries(),
                note,
                Location.Whole("")
            );
        });

    /// <summary>The same ones on every run.</summary>
    public static IEnumerable<T> Made<T>(this Gen<T> gen, int count, ulong seed)
    {
        var numbers = new PCG(1, seed);
        for (var i = 0; i < count; i++)
            yield return gen.Generate(numbers, null, out _);
    }

    private static Gen<int?> Maybe(Gen<int> gen) => Gen.OneOf(Gen.Const((int?)null), gen.Select(n => (int?)n));

    public static LogEntry Anywhere(this LogEntry entry) => entry with { At = Location.Whole("") };
}
