using Gradus.Domain;

namespace Gradus.Reading;

internal static class CautionReader
{
    private static readonly (string, CautionKind)[] Kinds =
    [
        ("stop", CautionKind.Stop),
        ("ease-off", CautionKind.EaseOff),
        ("take-care", CautionKind.TakeCare),
        ("expect", CautionKind.Expect),
    ];

    public static Caution? Read(SourceFile sheet, CautionId id, KnownIds known)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a caution") is not { } fields)
            return null;
        var title = fields.NeedText("title");
        var kind = fields.NeedChoice("kind", Kinds);
        var attachment = AttachmentIn(fields, known);
        fields.Done();
        var body = BodyOf(sheet, headed, known);
        return title is null || kind is null ? null : new(id, title, kind.Value, body, attachment, sheet.Whole);
    }

    /// <summary>What to do; a finding where there is nothing.</summary>
    public static Prose BodyOf(SourceFile sheet, Headed headed, KnownIds known)
    {
        var body = ProseReader.Read(sheet, headed.Body, headed.BodyLine, new(Placeholders: false, known.Exercises, known.Media));
        if (!body.Lines().Any())
            sheet.Fault(
                Faults.KeyMissing,
                sheet.At(headed.BodyLine, 1),
                "This caution does not say what to do.",
                "Write a sentence or two below the header."
            );
        return body;
    }

    private static readonly (string, AgeBand)[] Ages = [("under-18", AgeBand.Under18), ("over-65", AgeBand.Over65)];

    /// <summary>What cannot be told is not left out.</summary>
    private static readonly Attachment Everywhere = new(null, null, null, null, null);

    private static Attachment? AttachmentIn(Fields fields, KnownIds known)
    {
        if (fields.Group("attaches-to", "attaches-to") is not { } to)
            return fields.Has("attaches-to") ? Everywhere : null;
        var attachment = new Attachment(
            to.Choice("stage", ExerciseWords.Stages),
            to.Choice("position", ExerciseWords.Positions),
            known.MotionOf(to.SourceFile, to.Mention("trains"))?.Name,
            ExerciseWords.RegionOf(to.SourceFile, to.Mention("loads")),
            ExerciseWords.PropertyOf(to.SourceFile, to.Mention("property"), ExerciseWords.AttachedProperties),
            to.Choice("age", Ages),
            to.Mention("equipment")
        );
        to.Done();
        return attachment;
    }
}
