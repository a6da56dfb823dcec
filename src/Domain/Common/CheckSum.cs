namespace Gradus.Domain;

/// <summary>The CRC-32 that a zip keeps of every file, and a PNG of every chunk (APPNOTE.TXT 4.4.7; ISO/IEC 15948, annex D;
/// polynomial 0x04c11db7, here with its bits reversed). What .NET reads out of a zip it does not compare with it, so a damaged
/// page would be read as if it were whole.</summary>
public static class CheckSum
{
    private static readonly uint[] OfOneByte = Enumerable.Range(0, 256).Select(OfByte).ToArray();

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var sum = uint.MaxValue;
        foreach (var b in bytes)
            sum = OfOneByte[(byte)(sum ^ b)] ^ (sum >> 8);
        return ~sum;
    }

    private static uint OfByte(int b)
    {
        var sum = (uint)b;
        for (var bit = 0; bit < 8; bit++)
            sum = (sum & 1) == 1 ? (sum >> 1) ^ 0xedb88320 : sum >> 1;
        return sum;
    }
}
