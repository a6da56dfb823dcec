using System.Reflection;
using System.Runtime.Loader;

namespace Gradus.Tests.Mutants;

/// <summary>The tests, loaded a second time beside a mutated room.</summary>
internal sealed class Judge
{
    /// <summary>What runs on after its time is over has passed no place for so long, and is left to itself.</summary>
    private const int MillisecondsToStop = 10_000;

    private delegate bool[] Beginning(int mutant, int places, long passes, long milliseconds);

    private readonly Beginning begin;
    private readonly Func<long> passed;

    /// <summary>Held, because what nobody holds is unloaded.</summary>
    private readonly Beside context;
    private readonly int places;

    /// <param name="folder">Where the tests and all they need were built to.</param>
    /// <param name="cases">Finds the tests among what is loaded there.</param>
    /// <param name="mutant">On while the tests are found and whatever is made once is made; 0 for none.</param>
    public Judge(MutatedRoom room, string folder, Func<AssemblyLoadContext, IEnumerable<JudgeCase>> cases, int mutant)
    {
        context = new Beside(room, folder, isCollectible: mutant != 0);
        var mutated = context.LoadFromAssemblyName(new(room.Assembly));
        begin = Of<Beginning>(nameof(MutantSwitch.Begin));
        passed = Of<Func<long>>(nameof(MutantSwitch.Passed));
        places = room.Places;
        begin(mutant, places, long.MaxValue, MillisecondsToStop * 6);
        Cases = [.. cases(context)];

        T Of<T>(string name)
            where T : Delegate =>
            mutated.GetType(typeof(MutantSwitch).FullName ?? "")?.GetMethod(name)?.CreateDelegate<T>()
            ?? throw new MissingMethodException(name);
    }

    public IReadOnlyList<JudgeCase> Cases { get; }

    /// <summary>Runs one test on one mutant.</summary>
    /// <param name="passes">Places after which it is broken off, which counts as noticed.</param>
    /// <param name="milliseconds">The same by the clock.</param>
    public Verdict Run(JudgeCase test, int mutant, long passes, long milliseconds)
    {
        var reached = begin(mutant, places, passes, milliseconds);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Exception? fault = null;
        // A mutant may also never end where it passes no place.
        var thread = new Thread(
            () =>
            {
                try
                {
                    test.Run();
                }
#pragma warning disable CA1031 // Whatever is thrown says that the test saw something.
                catch (Exception e)
#pragma warning restore CA1031
                {
                    fault = e;
                }
            },
            maxStackSize: 16 << 20
        )
        {
            IsBackground = true,
        };
        thread.Start();
        if (!thread.Join(TimeSpan.FromMilliseconds(milliseconds + MillisecondsToStop)))
            fault = new TimeoutException("It passes no place any more.");
        return new(fault, clock.ElapsedMilliseconds, passed(), reached);
    }

    /// <summary>Our own assemblies once more, the mutated one instead of its original; all others are shared. What can be
    /// unloaded is compiled slower, so only that can which is loaded for one mutant.</summary>
    private sealed class Beside(MutatedRoom room, string folder, bool isCollectible)
        : AssemblyLoadContext("mutants", isCollectible)
    {
        protected override Assembly? Load(AssemblyName name)
        {
            if (name.Name == room.Assembly)
                return LoadFromStream(new MemoryStream(room.Bytes));
            var path = Path.Combine(folder, name.Name + ".dll");
            return name.Name is ['G', 'r', 'a', 'd', 'u', 's', '.', ..] or "gradus" && File.Exists(path)
                ? LoadFromAssemblyPath(path)
                : null;
        }
    }
}

/// <summary>What became of one test.</summary>
/// <param name="Fault">Null where it passed.</param>
/// <param name="Passes">How often it came by a place.</param>
/// <param name="Reached">The places that it came by.</param>
internal sealed record Verdict(Exception? Fault, long Milliseconds, long Passes, bool[] Reached);
