using System.Buffers.Binary;

namespace Gradus.Media;

/// <summary>JPEG (ITU T.81, annex B). Kept is what is needed to show it: its tables and its data, JFIF without a small second
/// picture, its colours (ICC, Adobe), and which way up it is. Whatever else an application wrote goes, known or not.</summary>
internal static class JpegParts
{
    private const int EndOfPicture = 0xD9,
        StartOfScan = 0xDA,
        Comment = 0xFE;

    /// <summary>Behind 0xFF it is no mark but data of a scan: taken for one, it would hide what begins in it until what stands
    /// between it and the scan is left out.</summary>
    private const int ZeroInData = 0;

    /// <summary>A camera writes ten or so, each of which goes through the whole picture; a few bytes can ask for
    /// thousands.</summary>
    private const int MostScans = 64;

    public static void Walk(FileInParts parts)
    {
        parts.Keep(0, 2);
        var (at, orientation, scans) = (2, 0, 0);
        while (parts.Trouble is null)
        {
            if (at + 2 > parts.Length)
            {
                parts.Fail("is cut off", parts.Length);
                return;
            }

            var kind = parts.All[at + 1];
            if (parts.All[at] != 0xFF || kind == ZeroInData)
                parts.Fail("is damaged: no part of a JPEG begins", at);
            else if (kind == 0xFF)
                at++;
            else if (kind == EndOfPicture)
            {
                parts.Keep(at, 2);
                if (at + 2 < parts.Length)
                    parts.Drop("what stands behind its end");
                parts.Turn(orientation);
                return;
            }
            else if (kind is 0x01 or (>= 0xD0 and <= 0xD8))
                at = Kept(parts, at, 2);
            else if (kind == StartOfScan && ++scans > MostScans)
                parts.Fail($"goes over itself more than {MostScans} times");
            else
                at = Segment(parts, at, kind, ref orientation);
        }
    }

    /// <returns>Where the next one begins.</returns>
    private static int Segment(FileInParts parts, int at, byte kind, ref int orientation)
    {
        var length = at + 4 <= parts.Length ? BinaryPrimitives.ReadUInt16BigEndian(parts.All[(at + 2)..]) : 0;
        if (length < 2 || at + 2 + length > parts.Length)
        {
            parts.Fail("is cut off", parts.Length);
            return at;
        }

        var body = parts.All.Slice(at + 4, length - 2);
        if (kind is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC) && body.Length >= 5)
            (parts.Height, parts.Width) = (
                BinaryPrimitives.ReadUInt16BigEndian(body[1..]),
                BinaryPrimitives.ReadUInt16BigEndian(body[3..])
            );
        if (kind == StartOfScan)
            return Kept(parts, at, 2 + length + DataAfter(parts.All[(at + 2 + length)..]));
        if (kind is not (Comment or (>= 0xE0 and <= 0xEF)))
            return Kept(parts, at, 2 + length);
        if (kind == 0xE1 && orientation == 0 && body.StartsWith("Exif\0"u8) && body.Length > 6)
            Exif(parts, at, body, ref orientation);
        else if (kind == 0xE0 && body.StartsWith("JFIF\0"u8) && body.Length >= 14)
            Jfif(parts, at, body);
        else if (
            (kind == 0xE2 && body.StartsWith("ICC_PROFILE\0"u8))
            || (kind == 0xEE && body.StartsWith("Adobe"u8) && body.Length == 12)
        )
            parts.Keep(at, 2 + length);
        else
            parts.Drop(NameOf(kind, body));
        return at + 2 + length;
    }

    /// <summary>Which way up it is stays, if it is any other than upright.</summary>
    private static void Exif(FileInParts parts, int at, ReadOnlySpan<byte> body, ref int orientation)
    {
        orientation = Orientation.Of(body[6..]);
        var alone = Orientation.Alone(orientation);
        if (orientation > 1 && body[6..].SequenceEqual(alone))
        {
            parts.Keep(at, 4 + body.Length);
            return;
        }

        parts.Drop("Exif");
        if (orientation > 1)
            parts.Put([0xFF, 0xE1, 0, (byte)(8 + alone.Length), .. "Exif\0\0"u8, .. alone]);
    }

    /// <summary>The small second picture may show what was cut off the large one (JFIF 1.02, page 5).</summary>
    private static void Jfif(FileInParts parts, int at, ReadOnlySpan<byte> body)
    {
        if (body.Length == 14 && body[12] == 0 && body[13] == 0)
        {
            parts.Keep(at, 18);
            return;
        }

        parts.Drop("a small second picture");
        parts.Put([0xFF, 0xE0, 0, 16, .. body[..12], 0, 0]);
    }

    /// <summary>The length of the data of a scan: to the next mark that is neither a zero byte put in nor a place to begin
    /// again.</summary>
    private static int DataAfter(ReadOnlySpan<byte> rest)
    {
        for (var at = 0; at < rest.Length; )
        {
            var mark = rest[at..].IndexOf((byte)0xFF);
            if (mark < 0 || at + mark + 1 >= rest.Length)
                return rest.Length;
            at += mark;
            if (rest[at + 1] is not (0 or (>= 0xD0 and <= 0xD7)))
                return at;
            at += 2;
        }

        return rest.Length;
    }

    private static int Kept(FileInParts parts, int at, int length)
    {
        parts.Keep(at, length);
        return at + length;
    }

    private static string NameOf(byte kind, ReadOnlySpan<byte> body) =>
        kind == Comment ? "a comment"
        : body.StartsWith("Exif"u8) ? "Exif"
        : body.StartsWith("http://ns.adobe.com/"u8) ? "XMP"
        : body.StartsWith("Photoshop"u8) ? "IPTC"
        : "what a camera or a program noted in it";
}
