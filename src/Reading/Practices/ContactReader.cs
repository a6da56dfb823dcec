using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>How a client reaches the coach. Both become links that a phone acts on, so both must lead somewhere.</summary>
internal static partial class ContactReader
{
    /// <summary>Three digits, as the short numbers have, to fifteen, the most that ITU-T E.164 allows.</summary>
    private const int FewestDigits = 3,
        MostDigits = 15;

    [GeneratedRegex(@"^[^@\s]+@[^@\s]+\z", RegexOptions.CultureInvariant)]
    private static partial Regex EmailShape();

    [GeneratedRegex(@"^\+?[0-9 ()-]+\z", RegexOptions.CultureInvariant)]
    private static partial Regex PhoneShape();

    public static Contact? In(Fields fields)
    {
        if (fields.NeedGroup("contact", "contact") is not { } contact)
            return null;
        var email = Checked(
            contact,
            "email",
            EmailShape(),
            EmailShape().IsMatch,
            "is no e-mail address",
            "Write it as coach@example.org."
        );
        var phone = Checked(
            contact,
            "phone",
            PhoneShape(),
            IsPhone,
            "is no telephone number",
            $"Write {FewestDigits} to {MostDigits} digits with + in front of the country, as \"+44 1632 960001\"; only "
                + "spaces, hyphens and round brackets may stand between them."
        );
        contact.Done();
        return email is null || phone is null ? null : new(email, phone);
    }

    private static string? Checked(Fields contact, string key, Regex shape, Func<string, bool> fits, string wrong, string help)
    {
        if (contact.NeedMention(key) is not { } written)
            return null;
        contact.SourceFile.Note(written, ValueKind.Of(shape));
        if (fits(written.Value))
            return written.Value;
        contact.SourceFile.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(written.Value)} {wrong}.",
            help,
            written.Value.Length
        );
        return null;
    }

    private static bool IsPhone(string written) =>
        PhoneShape().IsMatch(written) && written.Count(char.IsAsciiDigit) is >= FewestDigits and <= MostDigits;
}
