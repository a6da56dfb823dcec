using System.Text;
using System.Text.RegularExpressions;
using Gradus.Media;

namespace Gradus.Auditing;

/// <summary>A picture or a clip of a site that says more than it shows, or cannot be looked into.</summary>
/// <param name="Path">The file that it is, or that it is written out in.</param>
/// <param name="What">As the end of a sentence: "holds Exif", "is cut off".</param>
public sealed partial record MetadataSeen(string Path, string What)
{
    [GeneratedRegex(
        @"<(?:\w+:)?(?<what>metadata|RDF|xmpmeta)\b|\b(?<what>sodipodi:docname|inkscape:export-filename)\s*=",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex InDrawing();

    /// <summary>Null where the file is none, or says nothing more. A drawing is text, and anything else is known by its first
    /// bytes.</summary>
    public static MetadataSeen? In(string path, ReadOnlyMemory<byte> bytes)
    {
        if (path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
            return InDrawing().Match(Encoding.UTF8.GetString(bytes.Span)) is { Success: true } told
                ? new(path, $"holds '{told.Groups["what"].Value}'")
                : null;
        if (MediaFile.Of(bytes) is not { } file)
            return null;
        return file.Trouble is { } trouble ? new(path, trouble)
            : file.Tells.Count > 0 ? new(path, $"holds {string.Join(", ", file.Tells)}")
            : null;
    }

    /// <summary>The same of a file that is written out in an address.</summary>
    public static MetadataSeen? InData(string path, string address)
    {
        const string mark = ";base64,";
        var at = address.IndexOf(mark, StringComparison.Ordinal);
        if (at < 0)
            return null;
        var bytes = new byte[address.Length];
        return Convert.TryFromBase64Chars(address.AsSpan(at + mark.Length), bytes, out var written)
            ? In(
                address[..at].Contains("svg", StringComparison.OrdinalIgnoreCase) ? path + ".svg" : path,
                bytes.AsMemory(0, written)
            )
                is { } seen
                ? seen with
                {
                    Path = path,
                }
                : null
            : null;
    }
}
