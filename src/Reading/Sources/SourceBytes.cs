using System.Security.Cryptography;

namespace Gradus.Reading;

/// <summary>The bytes of a file of the disk, and what tells them from others. Two are equal where a text has the same bytes; what
/// is no text is only equal to itself. The bytes themselves are not held: of ten thousand clients they are a hundred
/// megabytes.</summary>
/// <param name="path">Inside the practice.</param>
/// <param name="length">In bytes, without reading them.</param>
internal sealed class SourceBytes(string path, Func<long> length, Func<byte[]> read, bool isText)
{
    /// <summary>No text that is read is larger.</summary>
    private const long Most = 4 << 20;

    private readonly Lock door = new();
    private string? noted;
    private string? seen;

    /// <summary>A hash of what was read; null where nobody has read it.</summary>
    public string? Hash
    {
        get
        {
            lock (door)
                return noted;
        }
    }

    /// <summary>One that another program writes meanwhile may be read twice, and not be the same: then its hash is that of no
    /// bytes.</summary>
    public byte[] Read()
    {
        var bytes = read();
        var now = HashOf(bytes);
        lock (door)
            noted = noted is null || noted == now ? now : noted + now;
        return bytes;
    }

    public override bool Equals(object? obj)
    {
        if (ReferenceEquals(this, obj))
            return true;
        if (!isText || obj is not SourceBytes other || !IsSameAs(other))
            return false;
        // Whoever takes what was read of the same bytes has read these.
        NoteAs(other.Hash);
        other.NoteAs(Hash);
        return true;
    }

    private void NoteAs(string? known)
    {
        lock (door)
            noted ??= known;
    }

    public override int GetHashCode() => path.GetHashCode(StringComparison.Ordinal);

    private bool IsSameAs(SourceBytes other)
    {
        try
        {
            return length() <= Most && Known() == other.Known();
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Of what was read; where nobody has read it, of what is there.</summary>
    private string Known()
    {
        lock (door)
            return noted ?? (seen ??= HashOf(read()));
    }

    private static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
