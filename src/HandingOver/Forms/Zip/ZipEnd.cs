using System.Buffers.Binary;

namespace Gradus.HandingOver;

/// <summary>The record that closes a zip and says where its list of entries stands (APPNOTE.TXT 4.3.16).</summary>
/// <param name="Entries">How many files and folders are listed.</param>
/// <param name="Start">Where the list begins, in bytes from the start of the zip.</param>
/// <param name="Size">The length of the list, in bytes.</param>
internal sealed record ZipEnd(int Entries, long Start, long Size)
{
    /// <summary>Its length in bytes, where no remark follows.</summary>
    public const int Length = 22;

    private const uint Signature = 0x06054b50;

    /// <summary>Reads the last bytes of a zip of the given length. Null where they are no such record, or not that of a plain
    /// zip: one piece, no remark, nothing between the list and its end. A zip so large that it needs longer numbers is none of
    /// ours.</summary>
    public static ZipEnd? Of(ReadOnlySpan<byte> last, long lengthOfZip)
    {
        if (last.Length != Length || BinaryPrimitives.ReadUInt32LittleEndian(last) != Signature)
            return null;
        var entries = Number(last[10..]);
        long size = BinaryPrimitives.ReadUInt32LittleEndian(last[12..]),
            start = BinaryPrimitives.ReadUInt32LittleEndian(last[16..]);
        var inOnePiece =
            Number(last[4..]) == 0 && Number(last[6..]) == 0 && Number(last[8..]) == entries && entries < ushort.MaxValue;
        return inOnePiece && Number(last[20..]) == 0 && start + size + Length == lengthOfZip ? new(entries, start, size) : null;
    }

    private static int Number(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16LittleEndian(bytes);
}
