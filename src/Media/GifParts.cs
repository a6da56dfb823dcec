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

    public static void Walk(Taking taking)
    {
        if (taking.Length < 13)
        {
            taking.Fail("is cut off", taking.Length);
            return;
        }

        (taking.Width, taking.Height) = (
            BinaryPrimitives.ReadUInt16LittleEndian(taking.All[6..]),
            BinaryPrimitives.ReadUInt16LittleEndian(taking.All[8..])
        );
        var at = 13 + Colours(taking.All[10]);
        taking.Keep(0, Math.Min(at, taking.Length));
        while (at < taking.Length)
        {
            var kind = taking.All[at];
            if (kind == Trailer)
            {
                taking.Keep(at, 1);
                if (at + 1 < taking.Length)
                    taking.Drop("what stands behind its end");
                return;
            }

            var end =
                kind == Extension ? Blocks(taking.All, at + 2)
                : kind == Image && at + 10 < taking.Length ? Blocks(taking.All, at + 11 + Colours(taking.All[at + 9]))
                : -1;
            if (end < 0)
                break;
            if (kind == Extension && taking.All[at + 1] == Comment)
                taking.Drop("a comment");
            else if (kind == Extension && taking.All[at + 1] == Application && !Repeats(taking.All[(at + 3)..]))
                taking.Drop("what a program noted in it");
            else
                taking.Keep(at, end - at);
            at = end;
        }

        taking.Fail("is cut off or damaged", at);
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
