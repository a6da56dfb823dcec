using Gradus.Domain;

namespace Gradus.Media;

public enum MediaKind
{
    Jpeg,
    Png,
    WebP,
    Gif,
    Mp4,
    WebM,
}

/// <summary>The bytes of a picture or a clip, taken apart by their own headers: how large it is on a page, what it says beside
/// what it shows, and the same without that. What is shown or heard stays as it is, byte for byte.</summary>
/// <param name="Width">In pixels, as it is meant to be seen, turned where it says so; 0 where it is damaged.</param>
/// <param name="Height">In pixels, likewise.</param>
/// <param name="Sounds">Whether something can be heard.</param>
/// <param name="Tells">What it says beside what it shows, in words and in order: where, when, by whom, with what.</param>
/// <param name="Bytes">Without any of that. The same memory where there was nothing; empty where it is damaged.</param>
/// <param name="Orientation">Which way up it is stored: Exif 3.0, tag 0x0112, 1 to 8.</param>
/// <param name="Trouble">What is damaged, and at which byte, as the end of a sentence; null where nothing is.</param>
public sealed record MediaFile(
    MediaKind Kind,
    int Width,
    int Height,
    bool Sounds,
    int Orientation,
    Series<string> Tells,
    ReadOnlyMemory<byte> Bytes,
    string? Trouble
)
{
    /// <summary>A size as it is shown as it is stored, or the other way round.</summary>
    internal (int Width, int Height) Turned((int Width, int Height) size) => Orientation >= 5 ? (size.Height, size.Width) : size;

    /// <summary>Null where the first bytes are those of no picture or clip that Gradus knows.</summary>
    public static MediaFile? Of(ReadOnlyMemory<byte> file)
    {
        if (KindOf(file.Span) is not { } kind)
            return null;
        var parts = new FileInParts(file);
        switch (kind)
        {
            case MediaKind.Jpeg:
                JpegParts.Walk(parts);
                break;
            case MediaKind.Png:
                PngParts.Walk(parts);
                break;
            case MediaKind.WebP:
                WebPParts.Walk(parts);
                break;
            case MediaKind.Gif:
                GifParts.Walk(parts);
                break;
            case MediaKind.Mp4:
                Mp4Parts.Walk(parts);
                break;
            default:
                WebMParts.Walk(parts);
                break;
        }

        if (parts.Trouble is null && (parts.Width is <= 0 or > ushort.MaxValue || parts.Height is <= 0 or > ushort.MaxValue))
            parts.Fail("says nowhere how wide and how high it is");
        return parts.Trouble is { } trouble
            ? new(kind, 0, 0, false, 1, [], ReadOnlyMemory<byte>.Empty, trouble)
            : new(
                kind,
                parts.Width,
                parts.Height,
                parts.Sounds,
                parts.Orientation,
                parts.Tells.Distinct().ToSeries(),
                parts.Rest(),
                null
            );
    }

    private static MediaKind? KindOf(ReadOnlySpan<byte> file)
    {
        if (file is [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, ..])
            return MediaKind.Png;
        if (file is [0xFF, 0xD8, ..])
            return MediaKind.Jpeg;
        if (file is [0x1A, 0x45, 0xDF, 0xA3, ..])
            return MediaKind.WebM;
        if (file.StartsWith("GIF87a"u8) || file.StartsWith("GIF89a"u8))
            return MediaKind.Gif;
        if (file.Length < 12)
            return null;
        if (file[4..].StartsWith("ftyp"u8))
            return MediaKind.Mp4;
        return file.StartsWith("RIFF"u8) && file[8..].StartsWith("WEBP"u8) ? MediaKind.WebP : null;
    }
}
