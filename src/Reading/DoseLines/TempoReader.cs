using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Reads the four beats of a tempo.</summary>
internal static class TempoReader
{
    private const int Beats = 4;

    private const string Help = "Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.";

    private static readonly NumberBound Beat = new("a beat", new(0, DoseBounds.Longest.Value), " s");

    public static Tempo? Read(DoseScanner scanner)
    {
        scanner.Next();
        var start = scanner.At;
        var beats = new List<int?>();
        do
        {
            if (scanner.Take("x"))
            {
                beats.Add(null);
                continue;
            }

            if (NumberReader.Whole(scanner, "a beat of the tempo", Help) is not { } number)
                return null;
            if (NumberReader.Within(scanner, new(number, number, number.Place), Beat) is not { } beat)
                return null;
            beats.Add(beat.Low);
        } while (scanner.Take('-'));

        var place = scanner.Since(start);
        if (beats.Count != Beats)
            return scanner.Refuse<Tempo>(
                place,
                $"A tempo has four beats, and {(beats.Count < Beats ? "fewer" : "more")} are written.",
                Help
            );
        return beats.Sum(beat => beat ?? 1) == 0
            ? scanner.Refuse<Tempo>(place, "A tempo of four zeros takes no time.", Help)
            : new(beats[0], beats[1], beats[2], beats[3]);
    }
}
