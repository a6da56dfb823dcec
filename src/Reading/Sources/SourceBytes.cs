using System.Security.Cryptography;

namespace Gradus.Reading;

/// <summary>The bytes of a file of the disk, as they are when they are first asked for. Two are equal where a text has the same
/// bytes; what is no text is only equal to itself.</summary>
/// <param name="path">Inside the practice.</param>
/// <param name="length">In bytes, without reading them.</param>
/// <param name="isText">A text is held, so that a later reading of the folder can tell whether it is the same.</param>
internal sealed class SourceBytes(string path, Func<long> length, Func<byte[]> read, bool isText)
{
    /// <summary>No text that is read is larger.</summary>
    private const long Most = 4 << 20;

    private readonly Lock door = new();
    private byte[]? held;
    private string? noted;

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
        var bytes = Bytes();
        var now = Convert.ToHexStringLower(SHA256.HashData(bytes));
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
            return length() <= Most && Bytes().AsSpan().SequenceEqual(other.Bytes());
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private byte[] Bytes()
    {
        lock (door)
        {
            if (held is { } known)
                return known;
            var bytes = read();
            if (isText && bytes.Length <= Most)
                held = bytes;
            return bytes;
        }
    }
}
