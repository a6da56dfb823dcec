using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a client sent → entries of a log. It tells a file from a message, and never stops at a mistake: it says it, and
/// goes on.</summary>
public static class LogReader
{
    /// <summary>The most that is read, in bytes, inclusive.</summary>
    public const int MostBytes = LogText.Most;

    /// <param name="name">What places in it are named after.</param>
    /// <param name="size">How many bytes it says it has, 0 where nobody knows: what says that it has too many is not
    /// opened.</param>
    /// <param name="open">Reads on from it; no more is read than can be a log.</param>
    /// <exception cref="IOException">It cannot be opened.</exception>
    public static LogReading Read(string name, long size, Func<Stream> open)
    {
        if (size > MostBytes)
            return TooLarge();
        using var stream = open();
        using var read = new MemoryStream();
        var part = new byte[64 * 1024];
        for (int count; (count = stream.Read(part)) > 0; )
        {
            read.Write(part, 0, count);
            if (read.Length > MostBytes)
                return TooLarge();
        }

        return Read(name, read.GetBuffer().AsSpan(0, (int)read.Length));
    }

    /// <inheritdoc cref="Read(string, long, Func{Stream})"/>
    public static LogReading Read(string name, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > MostBytes)
            return TooLarge();
        if (bytes is [(byte)'P', (byte)'K', 3, 4, ..])
            return Refused("this is a spreadsheet's own file, or a zip; save it as CSV");
        var remarks = new LogRemarks();
        var text = LogText.Of(bytes);
        if (text.IsGuessed)
            remarks.Note(0, "this is not in UTF-8, so letters other than a to z may have come out wrong");
        if (LogTable.StartOf(text.Text) is { } start)
            return LogTable.Read(name, text.Text, start, remarks);
        return LogMessage.IsIn(text.Text)
            ? LogMessage.Read(name, text.Text, remarks)
            : Refused(
                "this is no log: there is neither a head with the columns date and session in it, nor a line that begins with "
                    + "gradus and a date",
                NoteAlarms.In(text.Text, [])
            );
    }

    private static LogReading TooLarge() => Refused("this is larger than 4 MiB, the most that is read; no log is so large");

    /// <param name="sign">What in it cannot wait, log or not.</param>
    private static LogReading Refused(string why, string? sign = null)
    {
        var remarks = new LogRemarks();
        remarks.Unread(0, why);
        remarks.Alarm(0, sign);
        return remarks.Reading(null, []);
    }
}
