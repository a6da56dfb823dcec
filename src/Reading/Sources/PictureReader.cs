using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using Gradus.Domain;
using Gradus.Media;

namespace Gradus.Reading;

/// <summary>A file of the practice → a picture in the sizes that pages show, or what is wrong with it. Files of one content are
/// scaled once; several threads may ask at once.</summary>
internal sealed class PictureReader(SourceFolder folder, KeptPictures kept)
{
    /// <summary>A file above this is not even read, in bytes.</summary>
    private const long MostBytes = 256 * 1024 * 1024;

    public PictureRead Read(string path) => kept.Read(folder, path, () => Anew(path));

    private PictureRead Anew(string path)
    {
        var size = folder.SizeOrNone(path);
        if (size > MostBytes)
            return TooLarge(
                $"{Quote.Of(path)} has {size / 1024 / 1024} MiB, and the most is {MostBytes / 1024 / 1024}: {InWords}"
            );
        var bytes = folder.ReadOrNone(path);
        if (MediaFile.Of(bytes) is not { Kind: MediaKind.Jpeg or MediaKind.Png or MediaKind.WebP } file)
            return new(
                null,
                Faults.PictureMissing,
                $"{Quote.Of(path)} is no JPEG, PNG or WebP picture.",
                "Save it again as one of these."
            );
        if (file.Trouble is { } damage)
            return Damaged(path, damage);
        var pixels = (long)file.Width * file.Height;
        if (pixels > PictureScaler.MostPixels)
            return TooLarge(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Quote.Of(path)} has {file.Width} by {file.Height} pixels, which is more than "
                        + $"{PictureScaler.MostPixels / 1_000_000} million: {InWords}"
                )
            );
        var name = Convert.ToHexStringLower(SHA256.HashData(bytes))[..12];
        var picture = kept.Scaled.GetOrAdd(name, _ => new(() => PictureScaler.Scale(bytes, file))).Value;
        return picture.Trouble is { } trouble
            ? Damaged(path, trouble)
            : new(new(path, picture.Sizes.Select(s => Named(name, s)).ToSeries()), null, "", "");
    }

    /// <summary>A file of a site is named after the content of the picture it was made from: so no two take each other's place,
    /// no letter of the coach's own name for it has to be written in an address, and nothing that a phone writes into such a
    /// name, as the day, is handed over.</summary>
    private static PictureSize Named(string name, ScaledSize size)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"{Picture.Folder}{name}-{size.Width}");
        return new(
            size.Width,
            size.Height,
            new(path + ".webp", size.WebP),
            size.Jpeg is { } jpeg ? new Asset(path + ".jpg", jpeg) : null
        );
    }

    private const string InWords = "pages say in words what it shows, and do not show it.";

    private static PictureRead TooLarge(string message) =>
        new(null, Faults.PictureTooLarge, message, "Make it smaller: 2000 pixels on the longer side are more than enough.");

    private static PictureRead Damaged(string path, string trouble) =>
        new(
            null,
            Faults.PictureMissing,
            $"{Quote.Of(path)} {trouble}.",
            "Copy it again from where it came from, or save it again."
        );
}

/// <param name="Picture">Null where it cannot be shown.</param>
/// <param name="Fault">What is wrong; null where nothing is.</param>
internal sealed record PictureRead(Picture? Picture, RuleId? Fault, string Message, string Help)
{
    /// <summary>What is wrong, at a mention; null where nothing is. What is too large keeps nobody from training: the page stays
    /// whole.</summary>
    public Finding? FoundAt(MediaMention mention) =>
        Fault is { } fault
            ? mention.Found(fault, fault == Faults.PictureTooLarge ? Level.Warning : Level.Error, Message, Help)
            : null;
}

/// <summary>Pictures that were read before, for whoever reads a practice again.</summary>
internal sealed class KeptPictures
{
    private readonly ConcurrentDictionary<string, (object Version, PictureRead Read)> read = new(StringComparer.Ordinal);

    /// <summary>By the content of the picture that they were made from.</summary>
    public ConcurrentDictionary<string, Lazy<ScaledPicture>> Scaled { get; } = new(StringComparer.Ordinal);

    /// <summary>What was read of a file that is the same now, or what is read of it now.</summary>
    public PictureRead Read(SourceFolder folder, string path, Func<PictureRead> anew)
    {
        var version = folder.Version(path);
        if (read.TryGetValue(path, out var known) && known.Version.Equals(version))
            return known.Read;
        var now = anew();
        read[path] = (version, now);
        return now;
    }
}
