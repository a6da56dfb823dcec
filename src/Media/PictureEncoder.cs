using System.Runtime.InteropServices;
using SkiaSharp;

namespace Gradus.Media;

/// <summary>Pixels → WebP and JPEG, with nothing in them but what is seen: without a colour space, which means sRGB, no profile
/// is written either.</summary>
internal static class PictureEncoder
{
    private const int WebPQuality = 76,
        JpegQuality = 80;

    private static SKJpegEncoderOptions Jpeg =>
        new(JpegQuality, SKJpegEncoderDownsample.Downsample420, SKJpegEncoderAlphaOption.Ignore);

    /// <param name="asJpeg">Whether as JPEG too.</param>
    public static ScaledSize Encode(Pixels picture, bool asJpeg)
    {
        var pixels = new byte[picture.Width * picture.Height * 4];
        for (int from = 0, to = 0; to < pixels.Length; from += Pixels.Each, to += 4)
        {
            picture.Colours.AsSpan(from, Pixels.Each).CopyTo(pixels.AsSpan(to));
            pixels[to + 3] = 255;
        }

        var info = new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque, null);
        var pin = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var map = new SKPixmap(info, pin.AddrOfPinnedObject(), info.RowBytes);
            using var webP = map.Encode(new SKWebpEncoderOptions(SKWebpEncoderCompression.Lossy, WebPQuality));
            using var jpeg = asJpeg ? map.Encode(Jpeg) : null;
            return webP is null || (asJpeg && jpeg is null)
                ? throw new InvalidOperationException($"A picture of {info.Width} by {info.Height} pixels is not written.")
                : new(picture.Width, picture.Height, webP.ToArray(), jpeg?.ToArray());
        }
        finally
        {
            pin.Free();
        }
    }
}
