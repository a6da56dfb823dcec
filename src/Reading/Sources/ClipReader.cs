using Gradus.Media;

namespace Gradus.Reading;

/// <summary>A file of the practice → a clip without what else it says, or findings. What is too heavy is not even read.</summary>
internal static class ClipReader
{
    /// <summary>Above this it is slow to open on a phone, in bytes.</summary>
    private const int Heavy = 10 * 1024 * 1024;

    /// <summary>Above this it is not shown, in bytes.</summary>
    private const int TooHeavy = 40 * 1024 * 1024;

    private const string Smaller = "Make it smaller: half a minute at 720 pixels is enough to see how something is done.";

    public static MediaFile? Read(SourceFolder folder, MediaMention mention, string path)
    {
        var size = folder.SizeOrNone(path);
        if (IsTooHeavy(mention, path, size))
            return null;
        var file =
            path.EndsWith(".mp4", StringComparison.OrdinalIgnoreCase)
            || path.EndsWith(".webm", StringComparison.OrdinalIgnoreCase)
                ? MediaFile.Of(folder.ReadOrNone(path))
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
        if (size > Heavy)
            mention.Warn(
                Faults.ClipTooHeavy,
                $"{Quote.Of(path)} has {size / 1024} KiB, which is slow to open on a phone.",
                Smaller
            );
        return file;
    }

    /// <summary>The page stays whole: what is seen stands on it in words.</summary>
    private static bool IsTooHeavy(MediaMention mention, string path, long size)
    {
        if (size <= TooHeavy)
            return false;
        mention.Warn(
            Faults.ClipTooHeavy,
            $"{Quote.Of(path)} has {size / 1024 / 1024} MiB, and the most is {TooHeavy / 1024 / 1024}: pages say in words "
                + "what it shows, and do not show it.",
            Smaller
        );
        return true;
    }

    private static bool IsDamaged(MediaMention mention, string path, MediaFile file)
    {
        if (file.Trouble is not { } trouble)
            return false;
        mention.Fault(
            Faults.ClipMissing,
            $"{Quote.Of(path)} {trouble}.",
            "Copy it again from where it came from, or save it again."
        );
        return true;
    }
}
