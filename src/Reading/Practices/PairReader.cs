using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>start: { picture: lean-start.jpg, shows: The knee is above the ankle }</c> and <c>end</c>, of an exercise: how it
/// looks before and after the movement.</summary>
internal static class PairReader
{
    public static Inline? Picture(Fields fields, string key, KnownIds known)
    {
        if (fields.Group(key, "a picture") is not { } group)
            return null;
        var (picture, shows) = (group.NeedMention("picture"), group.NeedText("shows"));
        group.Done();
        if (picture is null || shows is null)
            return null;
        var mention = new MediaMention(group.SourceFile, picture.Value, picture.At, picture.Value.Length);
        if (!mention.IsClip)
            return known.Media.FindPicture(mention) is { } path ? new Inline.Picture(path, shows, [], picture.At) : null;
        mention.Fault(
            Faults.PictureMissing,
            $"{Quote.Of(picture.Value)} is a clip, and here stands a picture.",
            "Show the clip in the text below '## Do', and name here a picture of one moment."
        );
        return null;
    }

    /// <summary>What a translation says of that picture: <c>start: { shows: Das Knie ist über dem Knöchel }</c>.</summary>
    public static Inline? Words(Fields fields, string key)
    {
        if (fields.Group(key, "a picture in other words") is not { } group)
            return null;
        var shows = group.NeedText("shows");
        group.Done();
        return shows is null ? null : new Inline.Plain(shows);
    }
}
