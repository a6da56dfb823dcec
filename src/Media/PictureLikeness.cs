namespace Gradus.Media;

/// <summary>Whether two files show the same picture as far as anybody sees. Another kind of machine may work out the last digit
/// of a colour in another way, and then writes other bytes.</summary>
public static class PictureLikeness
{
    /// <summary>By how much each colour of each pixel may differ, of 255, inclusive.</summary>
    private const int Most = 2;

    /// <param name="made">A picture that was scaled.</param>
    /// <param name="found">Any bytes. A picture that tells anything beside what it shows is not like one that tells
    /// nothing.</param>
    public static bool AreAlike(ReadOnlyMemory<byte> made, ReadOnlyMemory<byte> found)
    {
        if (made.Span.SequenceEqual(found.Span))
            return true;
        if (
            MediaFile.Of(made) is not { Trouble: null } own
            || MediaFile.Of(found) is not { Trouble: null, Tells.Count: 0, Orientation: 1 } other
            || (own.Kind, own.Width, own.Height) != (other.Kind, other.Width, other.Height)
        )
            return false;
        return PixelsOf(made, own) is { } one && PixelsOf(found, other) is { } two && Differ(one, two) <= Most;
    }

    private static byte[]? PixelsOf(ReadOnlyMemory<byte> bytes, MediaFile file)
    {
        var whole = new Shrinking((file.Width, file.Height), (file.Width, file.Height));
        return PictureDecoder.Decode(bytes, file, [whole]) is null ? whole.Made().Colours : null;
    }

    private static int Differ(byte[] one, byte[] other) => one.Zip(other, (a, b) => Math.Abs(a - b)).DefaultIfEmpty().Max();
}
