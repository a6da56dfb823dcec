using System.Buffers.Binary;
using System.Text;

namespace Gradus.Media;

/// <summary>MP4 (ISO/IEC 14496-12). What says where, when or by whom is written over with nothing in its place, as a box of the
/// type <c>free</c> of the same length: the tables of the file count bytes from its start, so nothing may move.</summary>
internal static class Mp4Parts
{
    private const int DeepestNesting = 6;

    /// <summary>Boxes that hold others on the way to what a page must know.</summary>
    private static readonly string[] Holding = ["moov", "trak", "mdia"];

    /// <summary>What is not needed to show or to hear a clip: user data (among them the place, ©xyz and loci), metadata, and what
    /// only one maker knows.</summary>
    private static readonly string[] MetadataBoxes = ["udta", "meta", "uuid", "free", "skip", "wide"];

    public static void Walk(FileInParts parts) => Walk(parts, 0, parts.Length, new Track(), 0);

    private static void Walk(FileInParts parts, int from, int until, Track track, int depth)
    {
        for (var at = from; at < until && parts.Trouble is null; )
        {
            if (Box(parts, at, until) is not var (name, head, length))
            {
                parts.Fail(until == parts.Length ? "is cut off or damaged" : "is damaged: no box begins", at);
                return;
            }

            var (body, end) = (at + head, at + length);
            if (Holding.Contains(name, StringComparer.Ordinal) && depth < DeepestNesting)
            {
                parts.Keep(at, head);
                var own = name == "trak" ? new Track() : track;
                Walk(parts, body, end, own, depth + 1);
                if (name == "trak")
                    Ended(parts, own, at);
            }
            else if (MetadataBoxes.Contains(name, StringComparer.Ordinal))
                Emptied(parts, at, head, length, name);
            else if (name is "mvhd" or "tkhd" or "mdhd" && length >= head + 24)
                Header(parts, at, head, length, name, track);
            else
            {
                if (name == "hdlr" && length >= head + 12)
                    track.Kind = Encoding.ASCII.GetString(parts.All.Slice(body + 8, 4));
                parts.Keep(at, length);
            }

            at = end;
        }
    }

    private static void Ended(FileInParts parts, Track track, int at)
    {
        if (track.Kind == "vide" && parts.Width == 0)
            (parts.Width, parts.Height) = (track.Width, track.Height);
        else if (track.Kind == "soun")
            parts.Sounds = true;
        else if (track.Kind != "vide")
            parts.Fail("has a track that is neither picture nor sound, and may say where it was taken,", at);
    }

    private static void Emptied(FileInParts parts, int at, int head, int length, string name)
    {
        var body = parts.All.Slice(at + head, length - head);
        if (name is "free" or "skip" or "wide" && !body.ContainsAnyExcept((byte)0))
        {
            parts.Keep(at, length);
            return;
        }

        var empty = new byte[length];
        parts.All.Slice(at, head).CopyTo(empty);
        "free"u8.CopyTo(empty.AsSpan(4));
        parts.Drop(name is "udta" or "meta" ? "what a camera or a program noted in it" : "what only its maker can read");
        parts.Put(empty);
    }

    /// <summary>The moments at which it was made and changed stand behind version and flags, four bytes each or eight (8.2.2,
    /// 8.3.2, 8.4.2).</summary>
    private static void Header(FileInParts parts, int at, int head, int length, string name, Track track)
    {
        var body = parts.All.Slice(at + head, length - head);
        var wide = body[0] == 1;
        if (name == "tkhd" && body.Length >= (wide ? 96 : 84))
            track.Read(body[(wide ? 52 : 40)..]);
        var moments = wide ? 16 : 8;
        if (!body.Slice(4, moments).ContainsAnyExcept((byte)0))
        {
            parts.Keep(at, length);
            return;
        }

        var box = parts.All.Slice(at, length).ToArray();
        box.AsSpan(head + 4, moments).Clear();
        parts.Drop("when it was recorded");
        parts.Put(box);
    }

    /// <summary>Name, length of its head, and whole length; null where none begins there.</summary>
    private static (string Name, int Head, int Length)? Box(FileInParts parts, int at, int until)
    {
        if (at + 8 > until)
            return null;
        var (head, length) = (8, (long)parts.Big32(at));
        if (length == 1 && at + 16 <= until)
            (head, length) = (16, BinaryPrimitives.ReadInt64BigEndian(parts.All[(at + 8)..]));
        else if (length == 0)
            length = until - at;
        return length < head || length > until - at
            ? null
            : (Encoding.Latin1.GetString(parts.All.Slice(at + 4, 4)), head, (int)length);
    }

    private sealed class Track
    {
        public string Kind { get; set; } = "";

        public int Width { get; private set; }

        public int Height { get; private set; }

        /// <param name="matrix">Nine numbers, the first and the fifth of which are 0 where the picture is turned by a quarter;
        /// then width and height, in 65536ths of a pixel.</param>
        public void Read(ReadOnlySpan<byte> matrix)
        {
            (Width, Height) = (Number(matrix, 36) >> 16, Number(matrix, 40) >> 16);
            if (Number(matrix, 0) == 0 && Number(matrix, 16) == 0)
                (Width, Height) = (Height, Width);
        }

        private static int Number(ReadOnlySpan<byte> matrix, int at) => BinaryPrimitives.ReadInt32BigEndian(matrix[at..]);
    }
}
