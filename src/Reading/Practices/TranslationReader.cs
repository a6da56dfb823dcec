using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>ID.LANG.md</c>: the title and the text of a caution or an exercise in another language. It is no second
/// id.</summary>
internal static class TranslationReader
{
    /// <summary>The name of a translation's file, without its ending, as id and language.</summary>
    private static (string Id, string Language) Parts(string name) =>
        (name[..name.LastIndexOf('.')], name[(name.LastIndexOf('.') + 1)..]);

    public static Translation? OfCaution(SourceFile sheet, string name, KnownIds known)
    {
        var (id, language) = Parts(name);
        if (!IsKnown(sheet, "cautions", id, known.Cautions) || HeadOf(sheet, _ => { }) is not { } head)
            return null;
        var body = CautionReader.BodyOf(sheet, head.Headed, known);
        return head.Title is null ? null : new Translation.OfCaution(new(id), language, head.Title, body, sheet.Whole);
    }

    public static Translation? OfExercise(SourceFile sheet, string name, KnownIds known)
    {
        Inline? start = null,
            end = null;
        var (id, language) = Parts(name);
        if (!IsKnown(sheet, "exercises", id, known.Exercises) || HeadOf(sheet, Pair) is not { } head)
            return null;
        var text = ExerciseReader.TextOf(sheet, head.Headed, known) with { Start = start, End = end };
        return head.Title is null ? null : new Translation.OfExercise(new(id), language, head.Title, text, sheet.Whole);

        void Pair(Fields fields) => (start, end) = (PairReader.Words(fields, "start"), PairReader.Words(fields, "end"));
    }

    private static bool IsKnown(SourceFile sheet, string part, string id, IReadOnlySet<string> ids)
    {
        if (ids.Contains(id))
            return true;
        sheet.Fault(
            Faults.FileNameWrong,
            sheet.Whole,
            $"This would be the translation of {part}/{id}.md, which there is not.",
            Nearest.Ask(
                id,
                ids.Order(StringComparer.Ordinal),
                "Give it the name of the file that it translates, with the language before .md."
            )
        );
        return false;
    }

    private static (Headed Headed, string? Title)? HeadOf(SourceFile sheet, Action<Fields> more)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a translation") is not { } fields)
            return null;
        var title = fields.NeedText("title");
        more(fields);
        fields.Done();
        return (headed, title);
    }
}
