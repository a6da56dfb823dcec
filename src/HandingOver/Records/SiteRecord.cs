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
    internal byte[] Print() =>
        RecordJson.Print(json =>
        {
            json.WriteString("key", Key);
            json.WriteString("site", Site);
            RecordJson.Write(json, "standing", Standing, form =>
            {
                json.WriteString("form", form.Form);
                json.WriteString("hash", form.Hash);
                json.WriteNumber("pages", form.Pages);
                json.WriteNumber("bytes", form.Bytes);
            });
            RecordJson.Write(json, "found", Found);
            RecordJson.Write(json, "lines", Lines, line =>
            {
                json.WriteString("file", line.File);
                json.WriteNumber("line", line.Line);
                json.WriteString("text", line.Text);
            });
        });

    /// <exception cref="JsonException">It is no record; so are the others.</exception>
    internal static SiteRecord Parse(ReadOnlyMemory<byte> bytes)
    {
        using var json = JsonDocument.Parse(bytes);
        var whole = json.RootElement;
        return new(
            RecordJson.Text(whole, "key"),
            RecordJson.Text(whole, "site"),
            RecordJson.Each(whole, "standing", e => new StandingForm(
                RecordJson.Text(e, "form"),
                RecordJson.Text(e, "hash"),
                RecordJson.Whole(e, "pages"),
                e.GetProperty("bytes").GetInt64()
            )),
            RecordJson.Findings(whole, "found"),
            RecordJson.Each(whole, "lines", e => new FoundLine(
                RecordJson.Text(e, "file"),
                RecordJson.Whole(e, "line"),
                RecordJson.Text(e, "text")
            ))
        );
    }
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
