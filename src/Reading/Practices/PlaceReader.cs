using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A place of the body, as "left knee", "knee" or "neck" → region and side.</summary>
internal static class PlaceReader
{
    /// <summary>The side is null where none is written: then it is both, or the region has none. Null where it is no place, which
    /// is said at it.</summary>
    public static (Region Region, Side? Side)? Of(SourceFile sheet, Mention<string> written)
    {
        sheet.Note(
            written,
            ValueKind.Of(
                Region
                    .All.Where(r => r.IsSided)
                    .SelectMany(r => new[] { Side.Left, Side.Right }, (r, s) => $"{s.Word()} {r.Name}")
            )
        );
        sheet.Note(written, ValueKind.Of(Region.All.Select(r => r.Name)));
        var side =
            written.Value.StartsWith("left ", StringComparison.Ordinal) ? Side.Left
            : written.Value.StartsWith("right ", StringComparison.Ordinal) ? Side.Right
            : (Side?)null;
        var before = side is { } one ? one.Word().Length + 1 : 0;
        var name = new Mention<string>(written.Value[before..], written.At with { Column = written.At.Column + before });
        if (ExerciseWords.RegionOf(sheet, name) is not { } region)
            return null;
        if (side is null || region.IsSided)
            return (region, side);
        sheet.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(region.Name)} has no left and right.",
            "Take the side out.",
            written.Value.Length
        );
        return null;
    }
}
