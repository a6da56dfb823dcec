using System.Runtime.Loader;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Mutants;

internal enum Fate
{
    Killed,
    Survived,

    /// <summary>No test runs it.</summary>
    NotCovered,
}

/// <param name="Test">The first test that noticed it; empty for none.</param>
internal sealed record Judged(Mutant Mutant, Fate Fate, string Test);

/// <summary>The tests that are to judge.</summary>
/// <param name="isWanted">By name of a class.</param>
internal delegate IEnumerable<JudgeCase> Finder(AssemblyLoadContext context, Func<string, bool> isWanted);

/// <summary>Judges the mutants of one room: each by the tests that come by it, until one of them fails.</summary>
/// <param name="folder">Where the tests were built to.</param>
/// <param name="near">The namespace of the tests that are asked first, with those named after a file; the others are measured
/// only for what these do not notice.</param>
internal sealed class MutantRun(MutatedRoom room, string folder, Finder cases, Progress progress, string near)
{
    /// <summary>Milliseconds of a test on the code as it is, the first time: one that takes longer judges no mutants.</summary>
    private const long SlowestJudge = 20_000;

    /// <summary>A test that takes longer and is not that of the file judges only where none comes by that is faster.</summary>
    private const long Slow = 5_000;

    /// <summary>A mutant may make a test pass this many times as many places before it is broken off, and some beside.</summary>
    private const int Longer = 10;

    private const long Beside = 1_000_000;

    /// <summary>The same in milliseconds, for what is slow between two places; long, because the machine may be busy.</summary>
    private const long Pause = 20_000;

    /// <summary>A mutant that so many tests do not notice, the likeliest ones first, has survived. What reads every page is come
    /// by by nearly all of them, and the one that looks at just this may come late.</summary>
    private const int Patience = 600;

    /// <summary>The same where each is run in assemblies loaded anew.</summary>
    private const int PatienceAnew = 12;

    /// <summary>By name of a class: where the file of that name stands below the tests.</summary>
    private static readonly Lazy<ILookup<string, string>> Folders = new(() =>
        Repository
            .Files("tests", ".cs")
            .ToLookup(
                file => Path.GetFileNameWithoutExtension(file),
                file => Path.GetRelativePath(Repository.Path("tests"), Path.GetDirectoryName(file) ?? "").Replace('\\', '/'),
                StringComparer.Ordinal
            )
    );

    private Judge judge = new(room, folder, context => cases(context, _ => true), 0);

    private readonly List<Candidate> tests = [];

    private readonly Dictionary<string, IReadOnlyList<Candidate>> orders = new(StringComparer.Ordinal);

    /// <summary>Which tests noticed something in a file, the last one first: the next mutant of that file is shown to them
    /// first.</summary>
    private readonly Dictionary<string, List<string>> lucky = new(StringComparer.Ordinal);

    /// <summary>Tests that fail, or take too long, on the code as it is.</summary>
    public List<string> NoJudges { get; } = [];

    public int Tests { get; private set; }

    /// <summary>Those that are noticed by the near tests, in the order of the room; then the others in the same order.</summary>
    public IEnumerable<Judged> Judge()
    {
        var left = new List<Mutant>();
        foreach (var mutant in room.Mutants)
            if (progress.Before(mutant) is { } known)
                yield return known;
            else
                left.Add(mutant);
        var open = new List<Judged>();
        foreach (var (judged, spent) in Judged(left, isNear: true))
            if (judged.Fate == Fate.Killed)
            {
                progress.Add(judged, spent);
                yield return judged;
            }
            else
            {
                progress.Say($"not noticed by the near tests: {judged.Fate} {judged.Mutant.Spot}");
                open.Add(judged);
            }

        foreach (var ((judged, spent), before) in Judged([.. open.Select(o => o.Mutant)], isNear: false).Zip(open))
        {
            var last = judged.Fate == Fate.NotCovered ? before : judged;
            progress.Add(last, spent);
            yield return last;
        }
    }

    private IEnumerable<(Judged Judged, long Milliseconds)> Judged(IReadOnlyList<Mutant> mutants, bool isNear)
    {
        if (mutants.Count == 0)
            yield break;
        Measure(isNear);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        foreach (var mutant in mutants)
        {
            clock.Restart();
            yield return (Judged(mutant), clock.ElapsedMilliseconds);
        }
    }

    private void Measure(bool isNear)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var files = room.Mutants.Select(m => m.File).Distinct().ToArray();
        tests.Clear();
        orders.Clear();
        foreach (var test in judge.Cases.Where(c => IsNear(c) == isNear))
        {
            var first = judge.Run(test, 0, long.MaxValue, SlowestJudge);
            if (first.Fault is null)
                tests.Add(new(test, first));
            else
                NoJudge(test, first);
        }

        Tests += tests.Count;
        progress.Say($"{tests.Count} tests judge; the first pass took {clock.ElapsedMilliseconds} ms.");

        bool IsNear(JudgeCase test) => test.Namespace == near || files.Any(f => IsOf(f, test));
    }

    private void NoJudge(JudgeCase test, Verdict verdict)
    {
        NoJudges.Add($"{test.Name}: {verdict.Milliseconds} ms {verdict.Fault?.Message.Split('\n')[0]}");
        progress.Say("no judge: " + NoJudges[^1]);
    }

    private Judged Judged(Mutant mutant)
    {
        var reaching = Order(mutant.File).Where(t => t.First.Reached[mutant.Place]).ToArray();
        var fast = reaching.Where(t => t.First.Milliseconds <= Slow || IsOf(mutant.File, t.Test)).ToArray();
        var asked = 0;
        foreach (var candidate in Nearest(mutant, fast.Length > 0 ? fast : reaching).Take(Patience))
        {
            var usual = candidate.Usual ??= judge.Run(candidate.Test, 0, long.MaxValue, SlowestJudge);
            if (usual.Fault is not null || !usual.Reached[mutant.Place])
                continue;
            asked++;
            var passes = (usual.Passes * Longer) + Beside;
            var verdict = judge.Run(candidate.Test, mutant.Id, passes, (usual.Milliseconds * Longer) + Pause);
            if (verdict.Fault is not null)
                return Noticed(mutant, candidate.Test);
        }

        return asked > 0 ? new(mutant, Fate.Survived, "")
            : reaching.Length > 0 ? JudgedAnew(mutant)
            : new(mutant, Fate.NotCovered, "");
    }

    /// <summary>What runs only once, when a table is first needed, is mutated before that: in assemblies loaded anew, where the
    /// tests run that come by its file, and those of the file itself, which came by when the table was made.</summary>
    private Judged JudgedAnew(Mutant mutant)
    {
        var reaching = Nearest(mutant, Order(mutant.File)).Where(t => t.First.Milliseconds <= Slow).Take(PatienceAnew);
        var beside = tests.Where(t => IsOf(mutant.File, t.Test) && t.First.Milliseconds <= Slow).Take(Patience);
        var near = reaching.Union(beside).ToArray();
        var names = near.Select(t => t.Test.Name).ToHashSet(StringComparer.Ordinal);
        var classes = near.Select(t => t.Test.Class).ToHashSet(StringComparer.Ordinal);
        try
        {
            var anew = new Judge(room, folder, context => cases(context, classes.Contains), mutant.Id);
            foreach (var test in anew.Cases.Where(c => names.Contains(c.Name)))
                if (anew.Run(test, mutant.Id, long.MaxValue, Pause * 3).Fault is not null)
                    return Noticed(mutant, test);
        }
#pragma warning disable CA1031 // Whatever is thrown says that the mutant was noticed.
        catch (Exception)
#pragma warning restore CA1031
        {
            return new(mutant, Fate.Killed, "finding the tests");
        }

        return new(mutant, Fate.Survived, "");
    }

    /// <summary>A test that goes on failing once the mutant is off has kept something of it: all is loaded anew.</summary>
    private Judged Noticed(Mutant mutant, JudgeCase test)
    {
        if (!lucky.TryGetValue(mutant.File, out var before))
            lucky[mutant.File] = before = [];
        before.Remove(test.Name);
        before.Insert(0, test.Name);
        if (tests.FirstOrDefault(t => t.Test == test) is { } ours)
        {
            var after = judge.Run(test, 0, long.MaxValue, SlowestJudge);
            if (after.Fault is not null)
            {
                progress.Say($"stays broken after {mutant.Name}: {test.Name}");
                ours.Usual = after;
                Renew();
            }
        }

        return new(mutant, Fate.Killed, test.Name);
    }

    private void Renew()
    {
        judge = new(room, folder, context => cases(context, _ => true), 0);
        var anew = judge.Cases.ToLookup(c => c.Name, StringComparer.Ordinal);
        foreach (var candidate in tests)
        {
            candidate.Test = anew[candidate.Test.Name].FirstOrDefault() ?? candidate.Test;
            candidate.Usual = null;
        }
    }

    /// <summary>The tests that come by a file: first one of each way through it, those first that see much of it in little time,
    /// then the second of each way, and so on; of one way the fastest first.</summary>
    private IReadOnlyList<Candidate> Order(string file)
    {
        if (orders.TryGetValue(file, out var known))
            return known;
        var places = room.Found.Where(m => m.File == file).Select(m => m.Place).Distinct().Order().ToArray();
        var ways =
            from test in tests
            let way = string.Concat(places.Select(p => test.First.Reached[p] ? '1' : '0'))
            where way.Contains('1', StringComparison.Ordinal)
            group test by way;
        return orders[file] = [
            .. ways.SelectMany(way =>
                    way.OrderBy(t => t.First.Milliseconds)
                        .Select((test, i) => (test, Turn: i, Length: way.Key.Count(c => c == '1')))
                )
                .OrderBy(t => t.Turn)
                .ThenByDescending(t => (double)t.Length / (t.test.First.Milliseconds + 5))
                .Select(t => t.test),
        ];
    }

    /// <summary>What noticed it last time comes first, then the page of the rule and the tests named after the file, then what
    /// noticed something there.</summary>
    private IEnumerable<Candidate> Nearest(Mutant mutant, IReadOnlyList<Candidate> candidates)
    {
        var first = progress.First(mutant);
        var before = lucky.GetValueOrDefault(mutant.File) ?? [];
        var name = Path.GetFileNameWithoutExtension(mutant.File);
        var page = PageOf(name);
        return candidates.OrderBy(c => Nearness(c.Test));

        int Nearness(JudgeCase test)
        {
            var noticed = before.IndexOf(test.Name);
            return first == Progress.OnOneLine(test.Name) ? -1
                : noticed is >= 0 and < 3 ? noticed
                : test.Class.StartsWith(name, StringComparison.Ordinal) ? 10
                : test.Name.EndsWith(page, StringComparison.Ordinal) ? 11
                : IsBeside(mutant.File, test) ? 12
                : noticed >= 0 ? 20 + noticed
                : 1000;
        }
    }

    private static bool IsOf(string path, JudgeCase test) => IsNamedAfter(path, test) || IsBeside(path, test);

    /// <summary>Whether the test stands below the tests where the file stands below src, and that is not the room
    /// itself.</summary>
    private static bool IsBeside(string path, JudgeCase test) =>
        path.Split('/') is { Length: > 2 } parts && Folders.Value[test.Class].Contains(string.Join('/', parts.SkipLast(1)));

    private static bool IsNamedAfter(string path, JudgeCase test) =>
        Path.GetFileNameWithoutExtension(path) is var name
        && (test.Class.StartsWith(name, StringComparison.Ordinal) || test.Name.EndsWith(PageOf(name), StringComparison.Ordinal));

    /// <summary>How the name of a test ends that is given a rule.</summary>
    private static string PageOf(string file) => $"({Kebab.Of(file)})";

    /// <param name="first">What it came by when everything was made that is made once.</param>
    private sealed class Candidate(JudgeCase test, Verdict first)
    {
        public JudgeCase Test { get; set; } = test;
        public Verdict First { get; } = first;

        /// <summary>The same once everything is made; null until it is asked for.</summary>
        public Verdict? Usual { get; set; }
    }
}
