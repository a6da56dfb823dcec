using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What was received, for people: what cannot wait first, then each log with whose it is, what is new, and line by line
/// what could not be read.</summary>
internal static class ReceiveText
{
    /// <summary>Lines that are told of one log; a file that is wrong throughout is wrong in one way.</summary>
    private const int MostLines = 50;

    public static void WriteUrgent(TextWriter to, Series<ReceivedLog> received)
    {
        var urgent = received.SelectMany(r => r.Urgent).Distinct().ToArray();
        if (urgent.Length == 0)
            return;
        to.WriteLine("This cannot wait:");
        foreach (var sentence in urgent)
            to.WriteLine($"  {sentence}");
        to.WriteLine();
        to.Flush();
    }

    public static void Write(TextWriter to, Series<ReceivedLog> received)
    {
        foreach (var log in received)
        {
            to.WriteLine($"{log.Owned.Name}: {Sentence(log)}");
            var lines = Lines(log).ToArray();
            foreach (var line in lines.Take(MostLines))
                to.WriteLine($"  {line}");
            if (lines.Length > MostLines)
                to.WriteLine(FormattableString.Invariant($"  and {lines.Length - MostLines} more lines like these"));
        }
    }

    private static string Sentence(ReceivedLog log) =>
        log.Owned.Reading.Form is null ? "not taken."
        : log.Owned.Reading.Entries.Count == 0 ? "there is no session in it."
        : log.Owned.Owner is not { } owner ? "not taken."
        : $"{owner.Id}, {string.Join(", ", Counts(log))}.";

    private static IEnumerable<string> Counts(ReceivedLog log)
    {
        yield return ReceivingPractice.Counted(log.New, "session new", "sessions new");
        if (log.More > 0)
            yield return FormattableString.Invariant($"{log.More} with more than before");
        yield return FormattableString.Invariant($"{log.Known} known");
    }

    private static IEnumerable<string> Lines(ReceivedLog log) =>
        log
            .Owned.Refusals.Select(r => $"{r}.")
            .Concat(log.Written.Select(w => $"to be read, in their own words, {w}"))
            .Concat(log.Measured.Select(m => $"measured at home: {m}"))
            .Concat(log.NotCounted.Select(n => $"kept, not counted: {n}."))
            .Concat(log.Owned.Reading.Remarks.Select(r => $"{r}."));
}
