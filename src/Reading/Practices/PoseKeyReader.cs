using Gradus.Domain;
using Gradus.Figures;

namespace Gradus.Reading;

/// <summary><c>pose: { start: [half-kneeling, trunk upright], end: [front ankle dorsiflexion 25] }</c> and <c>feel: calf</c> of
/// an exercise: how it looks, and where it is felt.</summary>
internal static class PoseKeyReader
{
    /// <returns>Null where nothing is written, or something is wrong in it.</returns>
    public static WrittenPose? Read(Fields fields, SideCue? cue)
    {
        var group = fields.Group("pose", "a pose");
        var feel = FeelIn(fields, group is not null);
        if (group is null)
            return null;
        var (start, end) = (group.NeedTexts("start"), group.Texts("end"));
        group.Done();
        if (start.Count == 0)
            return null;
        var written = new WrittenPose(Plain(start), Plain(end)) { Feel = feel };
        var read = Movement.Read(written, cue);
        foreach (var fault in read.Faults)
        {
            var item = (fault.AtEnd ? end : start)[fault.Item];
            fields.SourceFile.Fault(
                Faults.PoseWrong,
                item.At with
                {
                    Column = item.At.Column + fault.Column,
                },
                fault.Message,
                fault.Help,
                fault.Length
            );
        }

        return read.Movement is null ? null : written;
    }

    private static Series<string> Plain(Series<Mention<string>> items) => items.Select(i => i.Value.Trim()).ToSeries();

    private static string? FeelIn(Fields fields, bool hasPose)
    {
        if (fields.Mention("feel") is not { } feel)
            return null;
        fields.SourceFile.Note(feel, ValueKind.Of(FeelPlaces.Names));
        if (FeelPlaces.Names.Contains(feel.Value) && hasPose)
            return feel.Value;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            feel.At,
            hasPose
                ? $"{Quote.Of(feel.Value)} is no place that a figure knows."
                : "'feel' is shown on a figure, and there is none.",
            hasPose
                ? Nearest.Ask(feel.Value, FeelPlaces.Names, $"Write one of: {string.Join(", ", FeelPlaces.Names)}.")
                : "Write a 'pose' too, or take it out.",
            feel.Value.Length
        );
        return null;
    }
}
