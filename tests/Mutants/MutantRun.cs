using System.Runtime.Loader;
using Gradus.Domain;

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

/// <summary>Judges the mutants of one room: each by the tests that come by it, until one of them fails.</summary>
/// <param name="folder">Where the tests were built to.</param>
/// <param name="cases">The tests that are to judge.</param>
internal sealed class MutantRun(MutatedRoom room, string folder, Func<AssemblyLoadContext, IEnumerable<JudgeCase>> cases)
{
    /// <summary>A test that takes longer on the code as it is judges no mutants.</summary>
    private const long SlowestJudge = 20_000;

    /// <summary>A mutant may make a test this much slower before it is broken off.</summary>
    private const int Slower = 10;

    /// <summary>Milliseconds that a test may take beside that: for a pause of the machine, and where all is new for
    /// compiling.</summary>
    private const long Pause = 1_000;

    private const long FirstTime = 30_000;

    /// <summary>Milliseconds of tests for one mutant; those that are likeliest to notice it come first.</summary>
    private const long Patience = 15_000;

    private readonly Judge judge = new(room, folder, cases, 0);

    /// <summary>The tests that judge, with how long they take and what they come by once everything is made that is made
    /// once.</summary>
    private readonly List<(JudgeCase Test, Verdict Usual)> tests = [];

    /// <summary>Which tests noticed something in a file, the last one first: the next mutant of that file is shown to them
    /// first.</summary>
    private readonly Dictionary<string, List<string>> lucky = new(StringComparer.Ordinal);

    private readonly bool[] reachedOnce = new bool[room.Places];

    /// <summary>Tests that fail, or take too long, on the code as it is.</summary>
    public List<string> NoJudges { get; } = [];

    public int Tests => tests.Count;

    public IEnumerable<Judged> Judge()
    {
        Measure();
        var ever = Reached(tests.Select(t => t.Usual));
        foreach (var mutant in room.Mutants)
            yield return ever[mutant.Place] ? Judged(mutant, judge, tests.Where(t => t.Usual.Reached[mutant.Place]), Pause)
            : reachedOnce[mutant.Place] ? JudgedAnew(mutant)
            : new(mutant, Fate.NotCovered, "");
    }

    private void Measure()
    {
        foreach (var test in judge.Cases)
        {
            var first = judge.Run(test, 0, SlowestJudge * 3);
            Add(first.Reached);
            var usual =
                first.Fault is null && first.Milliseconds <= SlowestJudge * 2 ? judge.Run(test, 0, SlowestJudge * 3) : first;
            if (usual.Fault is null && usual.Milliseconds <= SlowestJudge)
                tests.Add((test, usual));
            else
                NoJudges.Add($"{test.Name}: {usual.Milliseconds} ms {usual.Fault?.Message.Split('\n')[0]}");
        }
    }

    private void Add(bool[] reached)
    {
        for (var i = 0; i < reached.Length; i++)
            reachedOnce[i] |= reached[i];
    }

    private bool[] Reached(IEnumerable<Verdict> verdicts)
    {
        var all = new bool[room.Places];
        foreach (var verdict in verdicts)
            for (var i = 0; i < all.Length; i++)
                all[i] |= verdict.Reached[i];
        return all;
    }

    /// <summary>What runs only once, when a table is first needed, is mutated before that: in assemblies loaded anew.</summary>
    private Judged JudgedAnew(Mutant mutant)
    {
        Judge anew;
        try
        {
            anew = new(room, folder, cases, mutant.Id);
        }
#pragma warning disable CA1031 // Whatever is thrown says that the mutant was noticed.
        catch (Exception)
#pragma warning restore CA1031
        {
            return new(mutant, Fate.Killed, "finding the tests");
        }

        var usual = tests.ToDictionary(t => t.Test.Name, t => t.Usual, StringComparer.Ordinal);
        return Judged(mutant, anew, anew.Cases.Where(c => usual.ContainsKey(c.Name)).Select(c => (c, usual[c.Name])), FirstTime);
    }

    private Judged Judged(Mutant mutant, Judge by, IEnumerable<(JudgeCase Test, Verdict Usual)> candidates, long more)
    {
        var spent = 0L;
        if (!lucky.TryGetValue(mutant.File, out var before))
            lucky[mutant.File] = before = [];
        foreach (var (test, usual) in candidates.OrderBy(c => Nearness(mutant, c.Test, before)).ThenBy(c => c.Usual.Milliseconds))
        {
            var verdict = by.Run(test, mutant.Id, (usual.Milliseconds * Slower) + more);
            if (verdict.Fault is not null)
            {
                before.Remove(test.Name);
                before.Insert(0, test.Name);
                return new(mutant, Fate.Killed, test.Name);
            }

            if ((spent += usual.Milliseconds) > Patience)
                break;
        }

        return new(mutant, Fate.Survived, "");
    }

    /// <summary>The page of the rule and the tests named after the file come first, then what noticed something there.</summary>
    private static int Nearness(Mutant mutant, JudgeCase test, List<string> before)
    {
        var noticed = before.IndexOf(test.Name);
        var name = Path.GetFileNameWithoutExtension(mutant.File);
        return noticed is >= 0 and < 3 ? noticed
            : test.Class.StartsWith(name, StringComparison.Ordinal) ? 10
            : test.Name.EndsWith($"({Kebab.Of(name)})", StringComparison.Ordinal) ? 11
            : noticed >= 0 ? 20 + noticed
            : 1000;
    }
}
