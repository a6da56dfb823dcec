using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What a theme's own check in a browser leaves in its folder: which files were seen. It goes into no site.</summary>
/// <param name="Digest">Of every other file of the theme, as <see cref="DigestOf"/> has it.</param>
/// <param name="Version">Of the Gradus that checked it.</param>
/// <param name="Day">The day that was named when it was checked; null where none was.</param>
public sealed record CheckedTheme(string Digest, string Version, DateOnly? Day)
{
    public const string Path = "checked.txt";

    private const string DigestWord = "files ",
        VersionWord = "gradus ",
        DayWord = "day ";

    /// <summary>The digest of all paths and contents but this one's, whatever order they come in; in hexadecimal.</summary>
    public static string DigestOf(IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        using var whole = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (path, bytes) in files.Where(f => f.Key != Path).OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            whole.AppendData(Encoding.UTF8.GetBytes(path + "\n"));
            whole.AppendData(SHA256.HashData(bytes));
        }

        return Convert.ToHexStringLower(whole.GetHashAndReset());
    }

    /// <summary>The file, a line for each thing.</summary>
    public string Text() =>
        $"{VersionWord}{Version}\n{DigestWord}{Digest}\n"
        + (Day is { } day ? FormattableString.Invariant($"{DayWord}{day:yyyy-MM-dd}\n") : "");

    /// <summary>The digest that the file has; empty where it has none.</summary>
    public static string DigestIn(string text) =>
        text.Split('\n')
            .FirstOrDefault(line => line.StartsWith(DigestWord, StringComparison.Ordinal))
            ?[DigestWord.Length..].Trim()
        ?? "";
}

/// <summary>A theme as a rule sees it.</summary>
/// <param name="Name">What it is called in a finding.</param>
/// <param name="Digest">Of its files as they are now.</param>
/// <param name="Checked">Of those that were checked; null where none were.</param>
/// <param name="OfSheet">The stylesheets of its intake sheet; none where it has no such sheet.</param>
public sealed record ThemeSeen(string Name, string Digest, string? Checked, Series<SourceText> OfSheet);
