using System.Text.Json;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What was worked out of one client's sources: by this a publish knows what it need not work out again.</summary>
/// <param name="Key">A hash of all that it comes from, the day aside.</param>
/// <param name="Asked">What was asked of the practice on the way, which decides what the key is made of.</param>
/// <param name="Plan">The hash of the plan; empty where there was none.</param>
/// <param name="Edition">The hash of what an edition would hold; empty where there was no plan.</param>
/// <param name="Judged">What the findings come from beside the key.</param>
/// <param name="Found">What the rules on sources found of the client.</param>
public sealed record ClientRecord(string Key, Asked Asked, string Plan, string Edition, string Judged, Series<Finding> Found)
{
    /// <summary>As JSON, which is read back by <see cref="Parse"/> alone.</summary>
    internal byte[] Print() =>
        RecordJson.Print(json =>
        {
            json.WriteString("key", Key);
            json.WriteStartArray("exercises");
            foreach (var exercise in Asked.Exercises)
                json.WriteStringValue(exercise.Text);
            json.WriteEndArray();
            json.WriteBoolean("errors", Asked.IsOfErrors);
            json.WriteBoolean("everything", Asked.IsOfEverything);
            json.WriteString("plan", Plan);
            json.WriteString("edition", Edition);
            json.WriteString("judged", Judged);
            RecordJson.Write(json, "found", Found);
        });

    /// <exception cref="JsonException">It is no record; so are the others.</exception>
    internal static ClientRecord Parse(ReadOnlyMemory<byte> bytes)
    {
        using var json = JsonDocument.Parse(bytes);
        var whole = json.RootElement;
        var asked = new Asked();
        foreach (var exercise in RecordJson.Each(whole, "exercises", RecordJson.Text))
            asked.Note(new ExerciseId(exercise));
        if (whole.GetProperty("errors").GetBoolean())
            asked.NoteErrors();
        if (whole.GetProperty("everything").GetBoolean())
            asked.NoteEverything();
        return new(
            RecordJson.Text(whole, "key"),
            asked,
            RecordJson.Text(whole, "plan"),
            RecordJson.Text(whole, "edition"),
            RecordJson.Text(whole, "judged"),
            RecordJson.Findings(whole, "found")
        );
    }
}
