namespace Gradus.Tests.Media;

/// <summary>What a bad disk, a bad program or somebody with bad intent makes of a file.</summary>
internal static class Damage
{
    private const int MostNested = 500;

    public static readonly (string Name, Func<WholeFile, Chance, byte[]> Do)[] Kinds =
    [
        ("cut off", (file, chance) => file.Bytes[..chance.Below(file.Bytes.Length)]),
        ("bits flipped", Flipped),
        ("bytes changed", Changed),
        ("piece left out", LeftOut),
        ("piece put in", PutIn),
        ("length wrong", LengthWrong),
        ("part repeated", Repeated),
        ("parts in another order", Reordered),
        ("parts nested", Nested),
    ];

    private static byte[] Flipped(WholeFile file, Chance chance)
    {
        var bytes = file.Bytes.ToArray();
        for (var n = 1 + chance.Below(8); n > 0; n--)
            bytes[chance.Below(bytes.Length)] ^= (byte)(1 << chance.Below(8));
        return bytes;
    }

    /// <summary>Half of them in the first bytes of a part, where it matters.</summary>
    private static byte[] Changed(WholeFile file, Chance chance)
    {
        var bytes = file.Bytes.ToArray();
        var parts = file.Parts.ToArray();
        for (var n = 1 + chance.Below(8); n > 0; n--)
        {
            var at = chance.Below(2) == 0 ? chance.Below(bytes.Length) : chance.Of(parts) + chance.Below(16);
            if (at < bytes.Length)
                bytes[at] = (byte)chance.Of([0, 1, 0x7F, 0x80, 0xFE, 0xFF, chance.Below(256)]);
        }

        return bytes;
    }

    private static byte[] LeftOut(WholeFile file, Chance chance)
    {
        var from = chance.Below(file.Bytes.Length);
        var length = chance.Below(Math.Min(64, file.Bytes.Length - from) + 1);
        return [.. file.Bytes[..from], .. file.Bytes[(from + length)..]];
    }

    /// <summary>A piece of any file, of the same kind or another.</summary>
    private static byte[] PutIn(WholeFile file, Chance chance)
    {
        var other = chance.Of(WholeFile.All).Bytes;
        var (from, at) = (chance.Below(other.Length), chance.Below(file.Bytes.Length));
        return [.. file.Bytes[..at], .. other[from..(from + chance.Below(other.Length - from))], .. file.Bytes[at..]];
    }

    /// <summary>Nothing, one, as large as can be, negative where a sign is read, or a little more or less than it is.</summary>
    private static byte[] LengthWrong(WholeFile file, Chance chance)
    {
        var bytes = file.Bytes.ToArray();
        var length = bytes.AsSpan(chance.Of(file.Lengths.ToArray()), file.LengthBytes);
        switch (chance.Below(6))
        {
            case 0:
                length.Clear();
                break;
            case 1:
                length.Clear();
                length[chance.Below(2) == 0 ? 0 : ^1] = 1;
                break;
            case 2:
                length.Fill(0xFF);
                break;
            case 3:
                length.Fill(0xFF);
                length[0] = 0x7F;
                break;
            case 4:
                length.Clear();
                length[0] = 0x80;
                break;
            default:
                length[chance.Below(length.Length)] += (byte)(1 + chance.Below(255));
                break;
        }

        return bytes;
    }

    private static byte[] Repeated(WholeFile file, Chance chance)
    {
        var (from, until) = Part(file, chance);
        var part = file.Bytes[from..until];
        var times = 1 + chance.Below(chance.Below(10) == 0 ? MostNested : 4);
        return [.. file.Bytes[..until], .. Enumerable.Repeat(part, times).SelectMany(p => p), .. file.Bytes[until..]];
    }

    private static byte[] Reordered(WholeFile file, Chance chance)
    {
        var (from, until) = Part(file, chance);
        byte[] rest = [.. file.Bytes[..from], .. file.Bytes[until..]];
        var at = chance.Below(2) == 0 ? Math.Min(chance.Of(file.Parts.ToArray()), rest.Length) : chance.Below(rest.Length + 1);
        return [.. rest[..at], .. file.Bytes[from..until], .. rest[at..]];
    }

    /// <summary>Parts that hold parts, deeper than any true file has them; where no part holds others, the file in
    /// itself.</summary>
    private static byte[] Nested(WholeFile file, Chance chance)
    {
        var (from, until) = Part(file, chance);
        if (file.Around(file.Bytes[from..until]) is null)
            return [.. file.Bytes[..until], .. file.Bytes, .. file.Bytes[until..]];
        var inner = file.Bytes[from..until];
        for (var n = 1 + chance.Below(chance.Below(10) == 0 ? MostNested : 12); n > 0; n--)
            inner = file.Around(inner) ?? inner;
        return [.. file.Bytes[..from], .. inner, .. file.Bytes[until..]];
    }

    /// <summary>From the beginning of a part to that of the next.</summary>
    private static (int From, int Until) Part(WholeFile file, Chance chance)
    {
        int[] parts = [.. file.Parts.Distinct(), file.Bytes.Length];
        var n = chance.Below(parts.Length - 1);
        return (parts[n], parts[n + 1]);
    }
}
