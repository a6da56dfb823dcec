using System.Security.Cryptography;
using System.Text;

namespace Gradus.HandingOver;

/// <summary>A text locked by a passphrase, as <c>locked-file.md</c> says: AES-256 in Galois/Counter Mode (NIST SP 800-38D)
/// under a key that PBKDF2 (RFC 8018, 5.2) makes with HMAC-SHA-256.</summary>
internal static class LockedText
{
    /// <summary>OWASP Password Storage Cheat Sheet, PBKDF2-HMAC-SHA256.</summary>
    public const int Rounds = 600_000;

    private const int SaltBytes = 16,
        NonceBytes = 12,
        TagBytes = 16,
        KeyBytes = 32,
        Lines = 5;

    private const string Version = "gradus-locked 1",
        KeyFrom = "PBKDF2-SHA-256 600000 ",
        Cipher = "AES-256-GCM ",
        Sum = "SHA-256 ";

    private const string Again = "Ask for it to be sent again, or publish it again.";

    /// <summary>Salt and nonce are fresh each time: the same text never gives the same letters twice.</summary>
    public static string Lock(string text, Passphrase passphrase)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return Lock(text, KeyOf(passphrase, salt), salt, RandomNumberGenerator.GetBytes(NonceBytes));
    }

    /// <exception cref="HandOverException">It is cut or altered, of another version, or the passphrase is not the
    /// one.</exception>
    public static string Open(string locked, Passphrase passphrase)
    {
        var parts = Read(locked);
        return Open(parts, KeyOf(passphrase, parts.Salt));
    }

    internal static byte[] KeyOf(Passphrase passphrase, byte[] salt) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(passphrase.Text), salt, Rounds, HashAlgorithmName.SHA256, KeyBytes);

    /// <exception cref="HandOverException">It is cut or altered, or of another version.</exception>
    internal static LockedParts Read(string locked)
    {
        var lines = locked.Trim().Split('\n');
        if (lines[0] != Version)
            throw Version.StartsWith(lines[0], StringComparison.Ordinal)
                ? Cut()
                : new("The file was locked by another version of Gradus.", "Publish it again.");
        if (lines.Length != Lines)
            throw Cut();
        if (lines[^1] != Sum + SumOf(string.Join('\n', lines[..^1])))
            throw Altered();
        var data = Bytes(lines[3], "", null);
        return data.Length > TagBytes
            ? new(string.Join('\n', lines[..3]), Bytes(lines[1], KeyFrom, SaltBytes), Bytes(lines[2], Cipher, NonceBytes), data)
            : throw Altered();
    }

    /// <exception cref="HandOverException">It is not the key, or the head was altered.</exception>
    internal static string Open(LockedParts parts, byte[] key)
    {
        var text = new byte[parts.Data.Length - TagBytes];
        using var cipher = new AesGcm(key, TagBytes);
        try
        {
            cipher.Decrypt(
                parts.Nonce,
                parts.Data.AsSpan(0, text.Length),
                parts.Data.AsSpan(text.Length),
                text,
                Encoding.ASCII.GetBytes(parts.Head)
            );
            return Encoding.UTF8.GetString(text);
        }
        catch (AuthenticationTagMismatchException wrong)
        {
            throw new HandOverException(
                "This passphrase does not open the file.",
                "Check each word; where they are right, the file was altered.",
                wrong
            );
        }
    }

    private static string Lock(string text, byte[] key, byte[] salt, byte[] nonce)
    {
        var head = $"{Version}\n{KeyFrom}{Convert.ToBase64String(salt)}\n{Cipher}{Convert.ToBase64String(nonce)}";
        var plain = Encoding.UTF8.GetBytes(text);
        var data = new byte[plain.Length + TagBytes];
        using var cipher = new AesGcm(key, TagBytes);
        cipher.Encrypt(nonce, plain, data.AsSpan(0, plain.Length), data.AsSpan(plain.Length), Encoding.ASCII.GetBytes(head));
        var whole = $"{head}\n{Convert.ToBase64String(data)}";
        return $"{whole}\n{Sum}{SumOf(whole)}";
    }

    private static string SumOf(string whole) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(whole)));

    private static byte[] Bytes(string line, string before, int? length)
    {
        if (!line.StartsWith(before, StringComparison.Ordinal))
            throw Altered();
        var written = line[before.Length..];
        var bytes = new byte[written.Length];
        // Blanks, and bits behind the last byte, would be read over: what is read is what would be written.
        return
            Convert.TryFromBase64String(written, bytes, out var count)
            && (length is null || count == length)
            && Convert.ToBase64String(bytes, 0, count) == written
            ? bytes[..count]
            : throw Altered();
    }

    private static HandOverException Cut() => new("The file is not whole: its end is missing.", Again);

    private static HandOverException Altered() => new("The file was altered on its way.", Again);
}

/// <summary>A locked text taken apart.</summary>
/// <param name="Head">Its first three lines, which are vouched for as well as the data is.</param>
/// <param name="Data">The cipher text, and the 16 bytes of the tag behind it.</param>
internal sealed record LockedParts(string Head, byte[] Salt, byte[] Nonce, byte[] Data);
