using System.Buffers.Binary;

namespace Gradus.Media;

/// <summary>GIF (GIF89a specification, 1990). Kept is all but comments and what applications noted; how often a moving one
/// repeats stays.</summary>
internal static class GifParts
{
    private const byte Extension = 0x21,
        Image = 0x2C,
        Trailer = 0x3B,
        Comment = 0xFE,
        Application = 0xFF;

    public static void Walk(FileInParts parts)
    {
        if (parts.Length < 13)
        {
            parts.Fail("is cut off", parts.Length);
            return;
        }

        (parts.Width, parts.Height) = (
            BinaryPrimitives.ReadUInt16LittleEndian(parts.All[6..]),
            BinaryPrimitives.ReadUInt16LittleEndian(parts.All[8..])
        );
        var at = 13 + Colours(parts.All[10]);
        parts.Keep(0, Math.Min(at, parts.Length));
        while (at < parts.Length)
        {
            var kind = parts.All[at];
            if (kind == Trailer)
            {
                parts.Keep(at, 1);
                if (at + 1 < parts.Length)
                    parts.Drop("what stands behind its end");
                return;
            }

            var end =
                kind == Extension ? Blocks(parts.All, at + 2)
                : kind == Image && at + 10 < parts.Length ? Blocks(parts.All, at + 11 + Colours(parts.All[at + 9]))
                : -1;
            if (end < 0)
                break;
            if (kind == Extension && parts.All[at + 1] == Comment)
                parts.Drop("a comment");
            else if (kind == Extension && parts.All[at + 1] == Application && !Repeats(parts.All[(at + 3)..]))
                parts.Drop("what a program noted in it");
            else
                parts.Keep(at, end - at);
            at = end;
        }

        parts.Fail("is cut off or damaged", at);
    }

    private static bool Repeats(ReadOnlySpan<byte> name) => name.StartsWith("NETSCAPE2.0"u8) || name.StartsWith("ANIMEXTS1.0"u8);

    private static int Colours(byte packed) => (packed & 0x80) == 0 ? 0 : 3 << ((packed & 7) + 1);

    /// <summary>Behind the blocks that begin there; -1 where they have no end.</summary>
    private static int Blocks(ReadOnlySpan<byte> all, int at)
    {
        while (at < all.Length)
        {
            if (all[at] == 0)
                return at + 1;
            at += 1 + all[at];
        }

        return -1;
    }
}
