using System.Runtime.CompilerServices;

namespace Gradus.Tests.Mutants;

/// <summary>Says which mutant is on. This file is compiled into each mutated room; a copy in the tests themselves is not used.
/// All mutants of a room are in one assembly, so that it is compiled and loaded once: every member asks here which of its bodies
/// to run.</summary>
public static class MutantSwitch
{
    private static int active;
    private static long until = long.MaxValue;
    private static long most = long.MaxValue;
    private static long passed;
    private static bool[] reached = [];

    /// <param name="mutant">0 for the code as it is written.</param>
    /// <param name="places">How many places the room has; which of them are reached is counted anew.</param>
    /// <param name="passes">After so many places whatever runs here is broken off: a mutant may never end. Counted and not timed,
    /// so that a busy machine kills no mutant.</param>
    /// <param name="milliseconds">The same by the clock, for what is slow between two places.</param>
    /// <returns>One for each place, filled in while the room runs.</returns>
    public static bool[] Begin(int mutant, int places, long passes, long milliseconds)
    {
        (active, most, passed) = (mutant, passes, 0);
        until = Environment.TickCount64 + milliseconds;
        return reached = new bool[places];
    }

    /// <returns>How many places were passed since the beginning.</returns>
    public static long Passed() => passed;

    /// <summary>Every member, statement and branch of the mutated room comes by here.</summary>
    /// <returns>The mutant that is on.</returns>
    public static int At(int place)
    {
        if (place < reached.Length)
            reached[place] = true;
        if (++passed > most || Environment.TickCount64 > until)
            throw new TimeoutException("This mutant does not end.");
        // A mutant that calls itself for ever fails its test instead of ending the process.
        RuntimeHelpers.EnsureSufficientExecutionStack();
        return active;
    }
}
