using Gradus.Domain;

namespace Gradus.Media;

/// <summary>A photograph of any size → the sizes in which pages show it: upright, in sRGB, on white, with nothing beside what is
/// seen. Nothing here is loaded before a picture is scaled.</summary>
public static class PictureScaler
{
    /// <summary>More is not scaled, in pixels.</summary>
    public const int MostPixels = 60_000_000;

    /// <summary>Of the large size and the small one, in pixels. A picture is never made larger, and never more than twice as high
    /// as this.</summary>
    private const int LargeWidth = 960,
        SmallWidth = 480;

    /// <summary>Above this, in pixels, one after the other, so that two threads do not take twice the memory.</summary>
    private const int OneByOne = 30_000_000;

    private static readonly Lock Turn = new();

    /// <param name="file">As it is on the disk.</param>
    /// <param name="media">What its headers say; whole, and at most <see cref="MostPixels"/>.</param>
    public static ScaledPicture Scale(ReadOnlyMemory<byte> file, MediaFile media)
    {
        if ((long)media.Width * media.Height <= OneByOne)
            return Scaled(file, media);
        lock (Turn)
            return Scaled(file, media);
    }

    private static ScaledPicture Scaled(ReadOnlyMemory<byte> file, MediaFile media)
    {
        var shown = (media.Width, media.Height);
        var sizes = new[] { SmallWidth, LargeWidth }.Select(width => Fit(shown, width)).DistinctBy(s => s.Width).ToArray();
        var shrinkings = sizes.Select(s => new Shrinking(media.Turned(shown), media.Turned(s))).ToArray();
        return PictureDecoder.Decode(file, media, shrinkings) is { } trouble
            ? new([], trouble)
            : new(
                shrinkings.Select((s, n) => PictureEncoder.Encode(s.Made().TurnedBy(media.Orientation), n == 0)).ToSeries(),
                null
            );
    }

    /// <summary>The largest size of the same shape that fits, at least a pixel each way.</summary>
    private static (int Width, int Height) Fit((int Width, int Height) size, int width)
    {
        var (most, tallest) = (Math.Min(size.Width, width), Math.Min(size.Height, 2 * width));
        return (long)most * size.Height <= (long)tallest * size.Width
            ? (most, Part(size.Height, most, size.Width))
            : (Part(size.Width, tallest, size.Height), tallest);

        static int Part(int whole, int of, int by) => Math.Max(1, (int)(((long)whole * of + by / 2) / by));
    }
}

/// <param name="Sizes">The smallest first; empty where it cannot be shown.</param>
/// <param name="Trouble">Why it cannot, as the end of a sentence; null where it can.</param>
public sealed record ScaledPicture(Series<ScaledSize> Sizes, string? Trouble);

/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Jpeg">Of the smallest size alone: for browsers that show no WebP.</param>
public sealed record ScaledSize(int Width, int Height, byte[] WebP, byte[]? Jpeg);
