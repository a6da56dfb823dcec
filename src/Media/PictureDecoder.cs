using System.Runtime.InteropServices;
using SkiaSharp;

namespace Gradus.Media;

/// <summary>The bytes of a picture → its rows, as few as are needed: a JPEG and a WebP are read smaller at once.</summary>
internal static class PictureDecoder
{
    private const int RowsAtOnce = 16;

    /// <summary>In the eighths of its size in which a JPEG can be read, and the pixels a mean is made of at least, each
    /// way: 3 for 2.</summary>
    private const int Eighths = 8;

    /// <summary>Gives every row to each of those that shrink.</summary>
    /// <returns>What is wrong, as the end of a sentence; null where nothing is.</returns>
    public static string? Decode(ReadOnlyMemory<byte> file, MediaFile media, IReadOnlyList<Shrinking> shrinkings)
    {
        using var data = SKData.CreateCopy(file.Span);
        using var codec = SKCodec.Create(data);
        var stored = media.Turned((media.Width, media.Height));
        if (codec is null)
            return "cannot be shown: what it says of itself is damaged";
        if ((codec.Info.Width, codec.Info.Height) != stored)
            return $"cannot be shown: it says that it has {stored.Width} by {stored.Height} pixels, and has "
                + $"{codec.Info.Width} by {codec.Info.Height}";
        var (width, height) = Read(codec, media.Kind, stored, (shrinkings[^1].Width, shrinkings[^1].Height));
        using var srgb = SKColorSpace.CreateSrgb();
        var info = new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul, srgb);
        foreach (var shrinking in shrinkings)
            shrinking.Begin(width, height);
        var result =
            codec.StartScanlineDecode(info) == SKCodecResult.Success
                ? ByRows(codec, info, shrinkings)
                : Whole(codec, info, shrinkings);
        return result switch
        {
            SKCodecResult.Success => null,
            SKCodecResult.IncompleteInput => "cannot be shown: it is cut off",
            _ => "cannot be shown: it is damaged",
        };
    }

    /// <summary>The size to read it in: somewhat larger than what is made of it.</summary>
    private static (int Width, int Height) Read(
        SKCodec codec,
        MediaKind kind,
        (int Width, int Height) stored,
        (int Width, int Height) wanted
    )
    {
        if (kind == MediaKind.Png)
            return stored;
        for (var part = 1; part < Eighths; part++)
        {
            var size = codec.GetScaledDimensions((float)part / Eighths);
            if (size.Width >= wanted.Width * 3 / 2 && size.Height >= wanted.Height * 3 / 2)
                return (size.Width, size.Height);
        }

        return stored;
    }

    private static SKCodecResult ByRows(SKCodec codec, SKImageInfo info, IReadOnlyList<Shrinking> shrinkings)
    {
        var rows = new byte[info.RowBytes * RowsAtOnce];
        var pin = GCHandle.Alloc(rows, GCHandleType.Pinned);
        try
        {
            for (var at = 0; at < info.Height; at += RowsAtOnce)
            {
                var asked = Math.Min(RowsAtOnce, info.Height - at);
                if (codec.GetScanlines(pin.AddrOfPinnedObject(), asked, info.RowBytes) < asked)
                    return SKCodecResult.IncompleteInput;
                Add(rows, asked, info, shrinkings);
            }

            return SKCodecResult.Success;
        }
        finally
        {
            pin.Free();
        }
    }

    private static SKCodecResult Whole(SKCodec codec, SKImageInfo info, IReadOnlyList<Shrinking> shrinkings)
    {
        var whole = new byte[info.RowBytes * info.Height];
        var pin = GCHandle.Alloc(whole, GCHandleType.Pinned);
        try
        {
            var result = codec.GetPixels(info, pin.AddrOfPinnedObject());
            if (result == SKCodecResult.Success)
                Add(whole, info.Height, info, shrinkings);
            return result;
        }
        finally
        {
            pin.Free();
        }
    }

    private static void Add(ReadOnlySpan<byte> rows, int count, SKImageInfo info, IReadOnlyList<Shrinking> shrinkings)
    {
        for (var row = 0; row < count; row++)
            foreach (var shrinking in shrinkings)
                shrinking.Add(rows.Slice(row * info.RowBytes, info.RowBytes));
    }
}
