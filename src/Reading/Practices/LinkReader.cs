using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>clients/ID/link.yaml</c> → where the client's site is hosted.</summary>
internal static partial class LinkReader
{
    [GeneratedRegex(@"^[2-9][a-z2-7]{25}\z", RegexOptions.CultureInvariant)]
    private static partial Regex NameShape();

    [GeneratedRegex(@"^https?://[^\s?#@]+\z", RegexOptions.CultureInvariant)]
    private static partial Regex HostShape();

    /// <summary>Null where something is wrong with it, which is a finding.</summary>
    public static SiteLink? Read(SourceFile sheet)
    {
        if (Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "the link") is not { } fields)
            return null;
        var name = fields.NeedMention("name");
        var host = fields.NeedMention("host");
        fields.Done();
        if (name is null || host is null)
            return null;
        sheet.Note(name, ValueKind.Of(NameShape()));
        sheet.Note(host, ValueKind.Of(HostShape()));
        if (!SiteLink.IsName(name.Value))
            Refuse(
                name,
                "is no name that Gradus gives",
                "Put back what Gradus wrote, or delete the file: the next link is another."
            );
        var address = SiteLink.HostOf(host.Value);
        if (address is null)
            Refuse(host, "is no address that a site can be hosted at", "Write it as https://example.org/training/.");
        return SiteLink.IsName(name.Value) && address is not null ? new(name.Value, address, name.At) : null;

        void Refuse(Mention<string> written, string wrong, string help) =>
            sheet.Fault(Faults.ValueWrong, written.At, $"{Quote.Of(written.Value)} {wrong}.", help, written.Value.Length);
    }
}
