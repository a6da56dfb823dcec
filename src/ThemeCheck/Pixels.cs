using System.Buffers.Binary;
using System.IO.Compression;

namespace Gradus.ThemeCheck;

/// <summary>What a screenshot shows, pixel for pixel. Read from a PNG of eight bits a colour that is not interlaced, as Chromium
/// writes them (W3C PNG, third edition).</summary>
internal sealed class Pixels
{
    private static readonly double[] Light = [.. Enumerable.Range(0, 256).Select(Linear)];

    private readonly byte[] bytes;
    private readonly int step;

    private Pixels(int width, int height, int step, byte[] bytes) =>
        (Width, Height, this.step, this.bytes) = (width, height, step, bytes);

    public int Width { get; }

    public int Height { get; }

    /// <exception cref="InvalidDataException">It is another kind of picture.</exception>
    public static Pixels Of(byte[] png)
    {
        var (width, height, step) = (0, 0, 0);
        using var data = new MemoryStream();
        for (var at = 8; at + 8 <= png.Length; )
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            var kind = png.AsSpan(at + 4, 4);
            var body = png.AsSpan(at + 8, length);
            if (kind.SequenceEqual("IHDR"u8))
            {
                width = BinaryPrimitives.ReadInt32BigEndian(body);
                height = BinaryPrimitives.ReadInt32BigEndian(body[4..]);
                step = (body[8], body[9], body[12]) switch
                {
                    (8, 2, 0) => 3,
                    (8, 6, 0) => 4,
                    _ => throw new InvalidDataException("A screenshot is no plain PNG."),
                };
            }
            else if (kind.SequenceEqual("IDAT"u8))
                data.Write(body);
            at += length + 12;
        }

        data.Position = 0;
        using var unpacked = new ZLibStream(data, CompressionMode.Decompress);
        var row = width * step;
        var bytes = new byte[row * height];
        Span<byte> filter = stackalloc byte[1];
        for (var y = 0; y < height; y++)
        {
            unpacked.ReadExactly(filter);
            var line = bytes.AsSpan(y * row, row);
            unpacked.ReadExactly(line);
            Undo(filter[0], line, y == 0 ? [] : bytes.AsSpan((y - 1) * row, row), step);
        }

        return new(width, height, step, bytes);
    }

    /// <summary>How the pixel of the same place in another picture stands out from this one's: WCAG's ratio, 1 to 21.</summary>
    public double Against(Pixels other, int x, int y)
    {
        var (one, two) = (LightAt(x, y), other.LightAt(x, y));
        return (Math.Max(one, two) + 0.05) / (Math.Min(one, two) + 0.05);
    }

    private double LightAt(int x, int y)
    {
        var at = (y * Width + x) * step;
        return 0.2126 * Light[bytes[at]] + 0.7152 * Light[bytes[at + 1]] + 0.0722 * Light[bytes[at + 2]];
    }

    private static double Linear(int part)
    {
        var share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static void Undo(byte filter, Span<byte> line, ReadOnlySpan<byte> above, int step)
    {
        if (filter == 0)
            return;
        for (var i = 0; i < line.Length; i++)
        {
            var left = i >= step ? line[i - step] : 0;
            var up = above.IsEmpty ? 0 : above[i];
            var corner = i >= step && !above.IsEmpty ? above[i - step] : 0;
            line[i] += (byte)(
                filter switch
                {
                    1 => left,
                    2 => up,
                    3 => (left + up) / 2,
                    _ => Nearest(left, up, corner),
                }
            );
        }
    }

    /// <summary>Paeth's choice.</summary>
    private static int Nearest(int left, int up, int corner)
    {
        var guess = left + up - corner;
        var (a, b, c) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
        return a <= b && a <= c ? left
            : b <= c ? up
            : corner;
    }
}
