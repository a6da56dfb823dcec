using System.Security.Cryptography;

namespace Gradus.Domain;

/// <summary>The address under which a client's site stands on a host. Whoever knows it can read the site, so nobody must be
/// able to guess it, and it is the client's alone.</summary>
/// <param name="Name">Of the site's folder.</param>
/// <param name="Host">The address of the folder that it stands in, ending in <c>/</c>.</param>
public sealed record SiteLink(string Name, string Host, Location At)
{
    public const string File = "link.yaml";

    /// <summary>A digit from 2 to 9, then 25 of a to z and 2 to 7 (RFC 4648, 6, in small letters): 3 + 25 × 5 = 128 bits. The
    /// digit in front keeps it from being the id of a client.</summary>
    private const string Letters = "abcdefghijklmnopqrstuvwxyz234567",
        First = "23456789";

    private const int Behind = 25;

    /// <summary>A longer address neither fits a card nor is typed by anybody.</summary>
    private const int LongestHost = 150;

    /// <summary>The whole address.</summary>
    public string Address => $"{Host}{Name}/";

    public static string PathOf(ClientId client) => $"clients/{client}/{File}";

    /// <summary>A name that nobody can guess, from the system's generator.</summary>
    public static string NewName() =>
        RandomNumberGenerator.GetString(First, 1) + RandomNumberGenerator.GetString(Letters, Behind);

    public static bool IsName(string written) =>
        written.Length == Behind + 1 && First.Contains(written[0]) && written.Skip(1).All(Letters.Contains);

    /// <summary>The address of a folder on a host, ending in <c>/</c>; null where it is none that is safe. Everything there is
    /// asked for by https: on the way nobody reads along, and a browser keeps a site for later only so. A machine may try it by
    /// itself (W3C Secure Contexts, 3.1).</summary>
    public static string? HostOf(string written) =>
        written.Length <= LongestHost
        && Uri.TryCreate(written, UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttps || (address.Scheme == Uri.UriSchemeHttp && address.IsLoopback))
        && address is { UserInfo: "", Query: "", Fragment: "" }
            ? address.AbsoluteUri.TrimEnd('/') + "/"
            : null;
}
