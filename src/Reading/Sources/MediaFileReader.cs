using Gradus.Media;

namespace Gradus.Reading;

/// <summary>A file of the practice → a picture or a clip without what else it says, or findings. What is too heavy is not even
/// read.</summary>
internal static class MediaFileReader
{
    /// <summary>Above this a picture is slow to open on a phone, in bytes.</summary>
    private const int HeavyPicture = 1024 * 1024;

    /// <summary>Above this a picture is not shown, in bytes.</summary>
    private const int TooHeavyPicture = 10 * 1024 * 1024;

    /// <summary>Above this a clip is slow to open on a phone, in bytes.</summary>
    private const int HeavyClip = 10 * 1024 * 1024;

    /// <summary>Above this a clip is not shown, in bytes.</summary>
    private const int TooHeavyClip = 40 * 1024 * 1024;

    private const string SmallerPicture = "Make it smaller: 1200 pixels on the longer side are enough.";
    private const string SmallerClip = "Make it smaller: half a minute at 720 pixels is enough to see how something is done.";

    public static MediaFile? ReadPicture(SourceFolder folder, MediaMention mention, string path)
    {
        var size = Size(folder, path);
        if (IsTooHeavy(mention, path, size, TooHeavyPicture, SmallerPicture))
            return null;
        if (Read(folder, path) is not { Kind: MediaKind.Jpeg or MediaKind.Png or MediaKind.WebP } file)
        {
            mention.Fault(
                Faults.PictureMissing,
                $"{Quote.Of(path)} is no JPEG, PNG or WebP picture.",
                "Save it again as one of these."
            );
            return null;
        }

        if (IsDamaged(mention, path, file))
            return null;
        if (file.Sideways)
            mention.Warn(
                Faults.PictureSideways,
                $"{Quote.Of(path)} asks to be turned, which browsers do not do with a WebP picture.",
                "Turn it in a program for pictures, and save it again."
            );
        if (size > HeavyPicture)
            mention.Warn(
                Faults.PictureTooHeavy,
                $"{Quote.Of(path)} has {size / 1024} KiB, which is slow to open on a phone.",
                SmallerPicture
            );
        return file;
    }

    public static MediaFile? ReadClip(SourceFolder folder, MediaMention mention, string path)
    {
        var size = Size(folder, path);
        if (IsTooHeavy(mention, path, size, TooHeavyClip, SmallerClip))
            return null;
        var file =
            path.EndsWith(".mp4", StringComparison.OrdinalIgnoreCase)
            || path.EndsWith(".webm", StringComparison.OrdinalIgnoreCase)
                ? Read(folder, path)
                : null;
        if (file is not { Kind: MediaKind.Mp4 or MediaKind.WebM })
        {
            mention.Fault(
                Faults.ClipMissing,
                $"{Quote.Of(path)} is no MP4 or WebM clip.",
                "Save it again as one of these, with the ending .mp4 or .webm."
            );
            return null;
        }

        if (IsDamaged(mention, path, file))
            return null;
        if (size > HeavyClip)
            mention.Warn(
                Faults.PictureTooHeavy,
                $"{Quote.Of(path)} has {size / 1024} KiB, which is slow to open on a phone.",
                SmallerClip
            );
        return file;
    }

    /// <summary>The page stays whole: what is seen stands on it in words.</summary>
    private static bool IsTooHeavy(MediaMention mention, string path, long size, int limit, string smaller)
    {
        if (size <= limit)
            return false;
        mention.Warn(
            Faults.PictureTooHeavy,
            $"{Quote.Of(path)} has {size / 1024 / 1024} MiB, and the most is {limit / 1024 / 1024}: pages say in words "
                + "what it shows, and do not show it.",
            smaller
        );
        return true;
    }

    private static bool IsDamaged(MediaMention mention, string path, MediaFile file)
    {
        if (file.Trouble is not { } trouble)
            return false;
        mention.Fault(
            file.Kind is MediaKind.Mp4 or MediaKind.WebM ? Faults.ClipMissing : Faults.PictureMissing,
            $"{Quote.Of(path)} {trouble}.",
            "Copy it again from where it came from, or save it again."
        );
        return true;
    }

    /// <summary>What cannot be opened is as if it were empty.</summary>
    private static MediaFile? Read(SourceFolder folder, string path) => Opened(() => MediaFile.Of(folder.Read(path)));

    private static long Size(SourceFolder folder, string path) => Opened(() => folder.Size(path));

    private static T? Opened<T>(Func<T> open)
    {
        try
        {
            return open();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return default;
        }
    }
}
