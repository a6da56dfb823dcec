using System.Globalization;

namespace Gradus.Tests.Benchmarks;

/// <summary>Programmes written once against the same written out for everybody: the same sites, and what each stage
/// takes.</summary>
internal static class SharedRuns
{
    private const int Programmes = 20;

    /// <returns>Whether the sites are the same.</returns>
    public static bool Run(TextWriter to, int clients)
    {
        var programmes = Math.Min(Programmes, clients);
        // What is run for the first time is compiled first: that is not what is measured.
        Of(MadeShared.Of(Math.Min(clients, 20), Math.Min(programmes, 5), inFull: true));
        var full = Of(MadeShared.Of(clients, programmes, inFull: true));
        var shared = Of(MadeShared.Of(clients, programmes, inFull: false));
        to.WriteLine(Line($"{clients:N0} clients on {programmes} programmes, in seconds of processor time and MB allocated"));
        to.WriteLine(Line($"{"stage", -20}{"in full", 10}{"once", 10}{"ratio", 8}{"MB in full", 12}{"MB once", 10}"));
        foreach (var (one, other) in full.Laps.Zip(shared.Laps))
            to.WriteLine(
                Line($"{one.Stage, -20}{one.Processor, 10:N2}{other.Processor, 10:N2}{other.Processor / one.Processor, 8:N2}")
                    + Line($"{one.Megabytes, 12:N0}{other.Megabytes, 10:N0}")
            );
        var (before, after) = (full.Laps.Sum(l => l.Processor), shared.Laps.Sum(l => l.Processor));
        to.WriteLine(Line($"{"together", -20}{before, 10:N2}{after, 10:N2}{after / before, 8:N2}"));
        to.WriteLine(full.Hash == shared.Hash ? "The sites are the same." : "The sites are NOT the same.");
        return full.Hash == shared.Hash;
    }

    private static (Lap[] Laps, string Hash) Of(MadePractice made)
    {
        var folder = Directory.CreateTempSubdirectory("gradus-shared-").FullName;
        try
        {
            var laps = new Laps();
            var published = Publishing.Run(made, folder, laps);
            return ([.. laps.All], published.Hash());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
