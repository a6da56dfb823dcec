using System.Buffers.Binary;
using Microsoft.Win32.SafeHandles;

namespace Gradus.HandingOver;

/// <summary>Whether a zip is laid out as Gradus lays it out: one file after the other from the first byte to the list, nothing
/// between them, nothing compressed, nothing added, and each file's own header says what the list says of it (APPNOTE.TXT 4.3.7,
/// 4.3.12).</summary>
/// <remarks>Programs that unpack differ in which of the two they believe, and how far they read on in what is compressed. In a
/// zip that is laid out so they all see the same, and nothing in it can grow.</remarks>
internal static class PlainZip
{
    private const uint OfFile = 0x04034b50,
        OfList = 0x02014b50;
    private const int FileHeader = 30,
        ListHeader = 46;
    private const int NamesAreUtf8 = 0x0800;

    /// <summary>The list must fit into memory.</summary>
    public static bool Is(SafeFileHandle zip, ZipEnd end)
    {
        var list = new byte[end.Size];
        if (RandomAccess.Read(zip, list, end.Start) != list.Length)
            return false;
        var (at, next) = (0, 0L);
        for (var n = 0; n < end.Entries; n++)
        {
            if (PartOfList(list, at) is not { } said || Long(said, 42) != next || !IsSaidByFile(zip, end, said, next))
                return false;
            at += said.Length;
            next += FileHeader + said.Length - ListHeader + Long(said, 24);
        }
        return at == list.Length && next == end.Start;
    }

    /// <summary>What the list says of one file, the name last; null where that is not said as Gradus says it.</summary>
    private static byte[]? PartOfList(byte[] list, int at)
    {
        if (list.Length - at < ListHeader)
            return null;
        var said = list.AsSpan(at);
        var length = ListHeader + Short(said, 28);
        var plain =
            Long(said, 0) == OfList
            && Short(said, 8) == NamesAreUtf8
            && Short(said, 10) == 0
            && Long(said, 20) == Long(said, 24)
            && Short(said, 30) == 0
            && Short(said, 32) == 0
            && length <= said.Length;
        return plain ? said[..length].ToArray() : null;
    }

    private static bool IsSaidByFile(SafeFileHandle zip, ZipEnd end, byte[] said, long at)
    {
        var own = new byte[FileHeader + said.Length - ListHeader];
        return at + own.Length <= end.Start
            && RandomAccess.Read(zip, own, at) == own.Length
            && Long(own, 0) == OfFile
            && own.AsSpan(4..FileHeader).SequenceEqual(said.AsSpan(6..32))
            && own.AsSpan(FileHeader..).SequenceEqual(said.AsSpan(ListHeader..));
    }

    private static int Short(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);

    private static uint Long(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]);
}
