using System.Text.Json;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What one client's site was made from, what was found on it, and what of it stands: by this a publish knows what it
/// need not do again.</summary>
/// <param name="Key">A hash of all that the site and the findings come from.</param>
/// <param name="Site">Of all files of the site (<see cref="SiteHash"/>); empty where an error kept it from being handed
/// over.</param>
/// <param name="Standing">The forms in which it was handed over.</param>
/// <param name="Found">What was found on its pages.</param>
/// <param name="Lines">The lines of pages that findings point at.</param>
public sealed record SiteRecord(
    string Key,
    string Site,
    Series<StandingForm> Standing,
    Series<Finding> Found,
    Series<FoundLine> Lines
)
{
    /// <summary>What is recorded of that form; null where the site was not handed over in it.</summary>
    public StandingForm? In(IForm form) => Standing.FirstOrDefault(s => s.Form == form.Word);

    /// <summary>As JSON, which is read back by <see cref="Parse"/> alone.</summary>
    internal byte[] Print()
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteString("key", Key);
            json.WriteString("site", Site);
            Write(json, "standing", Standing, form =>
            {
                json.WriteString("form", form.Form);
                json.WriteString("hash", form.Hash);
                json.WriteNumber("pages", form.Pages);
                json.WriteNumber("bytes", form.Bytes);
            });
            Write(json, "found", Found, finding =>
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
            Write(json, "lines", Lines, line =>
            {
                json.WriteString("file", line.File);
                json.WriteNumber("line", line.Line);
                json.WriteString("text", line.Text);
            });
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    /// <exception cref="JsonException">It is no record; so are the others.</exception>
    internal static SiteRecord Parse(ReadOnlyMemory<byte> bytes)
    {
        using var json = JsonDocument.Parse(bytes);
        var whole = json.RootElement;
        return new(
            Text(whole, "key"),
            Text(whole, "site"),
            Each(whole, "standing", e => new StandingForm(
                Text(e, "form"),
                Text(e, "hash"),
                Whole(e, "pages"),
                e.GetProperty("bytes").GetInt64()
            )),
            Each(whole, "found", FindingIn),
            Each(whole, "lines", e => new FoundLine(Text(e, "file"), Whole(e, "line"), Text(e, "text")))
        );
    }

    private static Finding FindingIn(JsonElement e) =>
        new(
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
        };

    private static void Write<T>(Utf8JsonWriter json, string name, Series<T> items, Action<T> write)
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

    private static Series<T> Each<T>(JsonElement whole, string name, Func<JsonElement, T> read) =>
        whole.GetProperty(name).EnumerateArray().Select(read).ToSeries();

    private static string Text(JsonElement element, string name) =>
        element.GetProperty(name).GetString() ?? throw new JsonException($"'{name}' is nothing.");

    private static int Whole(JsonElement element, string name) => element.GetProperty(name).GetInt32();
}

/// <summary>A form in which a site was handed over.</summary>
/// <param name="Form">Its word.</param>
/// <param name="Hash">Of all that stood there then: <see cref="IForm.HashOf"/>.</param>
/// <param name="Bytes">The size of all its files together.</param>
public sealed record StandingForm(string Form, string Hash, int Pages, long Bytes)
{
    /// <summary>The form as it stands once it was written.</summary>
    public static StandingForm Of(IForm form, PublicationResult result) =>
        new(form.Word, form.HashOf(result.Place) ?? "", result.Pages, result.Bytes);
}

/// <summary>A line of a finished page that a finding points at.</summary>
/// <param name="Line">From 1.</param>
public sealed record FoundLine(string File, int Line, string Text);
