using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Gradus.Domain;

/// <summary>What tells one programme of one client from the next.</summary>
public static class CourseKey
{
    /// <summary>16 hexadecimal digits, the same as long as client, start and title are; nobody's name can be read from
    /// them.</summary>
    public static string Of(Client client)
    {
        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"gradus/course/{client.Id}/{client.Name}/{client.Programme.Start.Iso()}/{client.Programme.Title}"
        );
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
    }

    /// <summary>Every key that pages of that client have had, as far as the practice knows: that of the programme as it is
    /// written now, and those of all that was published.</summary>
    public static Series<string> KnownOf(Client client) =>
        client.Editions.Select(e => e.Content.Programme).Prepend(Of(client)).Distinct(StringComparer.Ordinal).ToSeries();
}
