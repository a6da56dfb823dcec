using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What a browser keeps a programme's log under, and by which a log finds its client again.</summary>
public static class CourseKey
{
    /// <summary>16 hexadecimal digits; the same as long as it is the same programme of the same client, and nobody's name can be
    /// read from it.</summary>
    public static string Of(Client client)
    {
        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"gradus/course/{client.Id}/{client.Name}/{client.Programme.Start.Iso()}/{client.Programme.Title}"
        );
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
    }

    /// <summary>Every key that pages of that client have had, as far as the practice knows: that of the programme as it is written
    /// now. Those of programmes before it belong here, once they are kept.</summary>
    public static Series<string> KnownOf(Client client) => [Of(client)];
}
