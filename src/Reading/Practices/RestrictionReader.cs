using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a clinician asked to be left out.</summary>
internal static class RestrictionReader
{
    public static Restriction? In(Fields fields, KnownIds known)
    {
        var by = fields.NeedText("by");
        var on = fields.NeedDate("on");
        var until = fields.NeedDate("until");
        var joint = fields.Mention("joint");
        var movement = fields.Mention("movement");
        var motion = movement is null ? null : known.MotionOf(fields.SourceFile, movement);
        var limits = fields.Has("limit") ? ClearanceReader.LimitsIn(fields) : [];
        var place = joint is null ? null : PlaceReader.Of(fields.SourceFile, joint);
        fields.Done();
        if (on > until)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                fields.Take("until")?.At ?? fields.At,
                "This restriction ends before it begins.",
                "Correct 'on' or 'until'.",
                "2026-12-07".Length
            );
        return
            by is null
            || on is null
            || until is null
            || on > until
            || (joint is not null && place is null)
            || (movement is not null && motion is null)
            ? null
            : new(by, on.Value, until.Value, place?.Region, place?.Side, motion?.Name, limits, fields.At);
    }
}
