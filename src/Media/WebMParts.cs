using System.Numerics;

namespace Gradus.Media;

/// <summary>WebM (RFC 9559, RFC 8794). What says where, when or by whom is written over with nothing in its place, an element
/// Void of the same length: the index of the file counts bytes from the start of its segment, so nothing may move.</summary>
internal static class WebMParts
{
    private const uint Segment = 0x18538067,
        Cluster = 0x1F43B675,
        Information = 0x1549A966,
        Tracks = 0x1654AE6B,
        TrackEntry = 0xAE,
        Picture = 0xE0;
    private const uint Title = 0x7BA9,
        Date = 0x4461,
        FileName = 0x7384,
        TrackName = 0x536E,
        Tags = 0x1254C367,
        Attachments = 0x1941A469,
        Chapters = 0x1043A770;
    private const uint CheckSum = 0xBF,
        Void = 0xEC,
        TrackKind = 0x83,
        PixelWidth = 0xB0,
        PixelHeight = 0xBA;
    private const int MostBeforeAByte = int.MaxValue >> 8;

    public static void Walk(FileInParts parts)
    {
        for (var at = 0; at < parts.Length && parts.Trouble is null; )
        {
            if (Element(parts, at) is not var (id, head, length))
            {
                parts.Fail("is cut off or damaged", at);
                return;
            }

            if (id is Segment or Cluster or Information or Tracks or TrackEntry or Picture)
            {
                parts.Keep(at, head);
                at += head;
                continue;
            }

            Kept(parts, at, id, head, length);
            at += head + length;
        }
    }

    private static void Kept(FileInParts parts, int at, uint id, int head, int length)
    {
        var body = parts.All.Slice(at + head, length);
        var what = id switch
        {
            Title or TrackName or Tags or Chapters => "words about it",
            Date => "when it was recorded",
            Attachments => "another file",
            FileName => "the name of a file",
            Void when body.ContainsAnyExcept((byte)0) => "what only its maker can read",
            _ => null,
        };
        if (id == TrackKind)
            Track(parts, Number(body), at);
        else if (id is PixelWidth && parts.Width == 0)
            parts.Width = Number(body);
        else if (id is PixelHeight && parts.Height == 0)
            parts.Height = Number(body);
        if (what is not null)
            parts.Drop(what);

        // The sum of what stood around something that is gone would not be true any more.
        if (what is not null || id == CheckSum)
            parts.Put(Empty(head + length));
        else
            parts.Keep(at, head + length);
    }

    private static void Track(FileInParts parts, int kind, int at)
    {
        if (kind == 2)
            parts.Sounds = true;
        else if (kind != 1)
            parts.Fail("has a track that is neither picture nor sound, and may say where it was taken,", at);
    }

    /// <summary>Void, its length in one byte where that is enough, and zeros.</summary>
    private static byte[] Empty(int length)
    {
        var empty = new byte[length];
        empty[0] = (byte)Void;
        if (length < 10)
        {
            empty[1] = (byte)(0x80 | (length - 2));
            return empty;
        }

        empty[1] = 0x01;
        for (var (n, rest) = (8, (long)length - 9); n > 1; n--, rest >>= 8)
            empty[n] = (byte)rest;
        return empty;
    }

    /// <summary>Number, length of its head, length of its body; what has no length of its own, or holds others that are walked
    /// through, ends where they end.</summary>
    private static (uint Id, int Head, int Length)? Element(FileInParts parts, int at)
    {
        var all = parts.All[at..];
        var idLength = BitOperations.LeadingZeroCount((uint)all[0]) - 23;
        if (idLength > 4 || all.Length <= idLength)
            return null;
        var id = 0u;
        foreach (var b in all[..idLength])
            id = (id << 8) | b;
        var sizeLength = BitOperations.LeadingZeroCount((uint)all[idLength]) - 23;
        if (sizeLength > 8 || all.Length < idLength + sizeLength)
            return null;
        var size = (long)all[idLength] & ((1 << (8 - sizeLength)) - 1);
        var unknown = size == (1 << (8 - sizeLength)) - 1;
        foreach (var b in all[(idLength + 1)..(idLength + sizeLength)])
        {
            size = (size << 8) | b;
            unknown &= b == 0xFF;
        }

        var (head, rest) = (idLength + sizeLength, all.Length - idLength - sizeLength);
        if (unknown)
            return id is Segment or Cluster ? (id, head, 0) : null;
        return size > rest || size < 0 ? null : (id, head, (int)size);
    }

    /// <summary>The largest there is where it is larger.</summary>
    private static int Number(ReadOnlySpan<byte> body)
    {
        var number = 0;
        foreach (var b in body)
            number = number > MostBeforeAByte ? int.MaxValue : (number << 8) | b;
        return number;
    }
}
