using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A dose as the JSON text of <c>gradus dose --format json</c>, fixed in <c>dose-line.md</c>, JSON.</summary>
public static class DoseJson
{
    private const int Decimals = 2;

    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The low and the high end, and with a number of weeks the dose of each as it grows from week 1 to the last. Lines
    /// end in <c>\n</c>; there is none after the last. Efforts are rounded to two decimals, half away from zero.</summary>
    /// <param name="weeks">Null leaves the weeks out.</param>
    /// <exception cref="ArgumentException">The dose takes longer than 4 h.</exception>
    public static string Write(Dose dose, DoseSettings settings, AskedWeeks? weeks)
    {
        var text = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(text, Layout))
        {
            json.WriteStartObject();
            WriteEnd(json, "low", dose.Low().Settled(), settings);
            WriteEnd(json, "high", dose.High().Settled(), settings);
            if (weeks is not null)
                WriteWeeks(json, DoseWeeks.Of(dose, settings, weeks), settings);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(text.WrittenSpan);
    }

    private static void WriteEnd(Utf8JsonWriter json, string name, SettledDose settled, DoseSettings settings)
    {
        var measures = DoseMeasures.Of(settled, settings);
        json.WriteStartObject(name);
        WriteMeasures(json, measures);
        json.WriteStartArray("steps");
        foreach (var step in Timeline.Of(settled, settings).Steps)
            WriteStep(json, step, settled.Sides);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMeasures(Utf8JsonWriter json, DoseMeasures measures)
    {
        json.WriteNumber("seconds", measures.Seconds.Value);
        json.WriteBoolean("about", measures.About);
        json.WriteNumber("stretchSeconds", measures.StretchSeconds.Value);
        json.WriteNumber("contractionSeconds", measures.ContractionSeconds.Value);
        json.WriteNumber("effortSeconds", Shown(measures.EffortSeconds));
        json.WriteNumber("reps", measures.Reps);
    }

    private static void WriteStep(Utf8JsonWriter json, TimelineStep step, WorkedSides sides)
    {
        json.WriteStartObject();
        json.WriteString("kind", step.Kind.ToString().ToLowerInvariant());
        json.WriteString("side", sides.TurnOf(step.Side) is { } turn ? Kebab.Of(turn.ToString()) : null);
        json.WriteNumber("seconds", step.Seconds.Value);
        if (step is TimelineStep.Work { EffortPercent: { } percent })
            json.WriteNumber("effort", Shown(percent));
        else
            json.WriteNull("effort");
        json.WriteEndObject();
    }

    private static void WriteWeeks(Utf8JsonWriter json, DoseWeeks grown, DoseSettings settings)
    {
        json.WriteStartArray("weeks");
        foreach (var week in grown.Weeks)
        {
            json.WriteStartObject();
            json.WriteNumber("week", week.Week);
            json.WriteString("dose", week.Dose.ToString());
            WriteMeasures(json, DoseMeasures.Of(week.Dose, settings));
            json.WriteBoolean("lighter", week.IsLighter);
            if (week.Since is { } since)
                json.WriteNumber("ratio", Shown((decimal)since.Now / since.Before));
            else
                json.WriteNull("ratio");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("notes");
        foreach (var note in grown.Notes)
            json.WriteStringValue(note);
        json.WriteEndArray();
    }

    /// <summary>Rounded, and without zeros at the end: dividing by one with many decimals drops them.</summary>
    private static decimal Shown(decimal value) =>
        decimal.Round(value, Decimals, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m;
}
