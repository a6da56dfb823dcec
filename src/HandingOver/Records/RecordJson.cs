using System.Text.Json;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What records of several kinds are written with, and read back.</summary>
internal static class RecordJson
{
    public static byte[] Print(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    public static void Write<T>(Utf8JsonWriter json, string name, Series<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Write(Utf8JsonWriter json, string name, Series<Finding> findings) => Write(json, name, findings, finding =>
        {
            json.WriteString("rule", finding.Rule.Text);
            json.WriteString("level", finding.Level.ToString());
            json.WriteString("client", finding.Client?.Text);
            json.WriteString("file", finding.At.File);
            json.WriteNumber("line", finding.At.Line);
            json.WriteNumber("column", finding.At.Column);
            json.WriteString("message", finding.Message);
            json.WriteString("help", finding.Help);
            json.WriteNumber("length", finding.Length);
            json.WriteNumber("places", finding.Places);
        });

    public static Series<Finding> Findings(JsonElement whole, string name) =>
        Each(whole, name, e => new Finding(
            new(Text(e, "rule")),
            Enum.Parse<Level>(Text(e, "level")),
            e.GetProperty("client").GetString() is { } client ? new ClientId(client) : null,
            new(Text(e, "file"), Whole(e, "line"), Whole(e, "column")),
            Text(e, "message"),
            Text(e, "help"),
            Whole(e, "length")
        )
        {
            Places = Whole(e, "places"),
        });

    public static Series<T> Each<T>(JsonElement whole, string name, Func<JsonElement, T> read) =>
        whole.GetProperty(name).EnumerateArray().Select(read).ToSeries();

    /// <exception cref="JsonException">It is none.</exception>
    public static string Text(JsonElement element) => element.GetString() ?? throw new JsonException("A text is nothing.");

    /// <inheritdoc cref="Text(JsonElement)"/>
    public static string Text(JsonElement element, string name) => Text(element.GetProperty(name));

    public static int Whole(JsonElement element, string name) => element.GetProperty(name).GetInt32();
}
