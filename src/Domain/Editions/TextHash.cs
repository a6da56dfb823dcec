using System.Security.Cryptography;
using System.Text;

namespace Gradus.Domain;

/// <summary>Texts → a hash by which a change of them is seen.</summary>
public static class TextHash
{
    /// <summary>SHA-256 of the whole, 64 hexadecimal digits.</summary>
    public static string Whole(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <summary>16 hexadecimal digits. Where one text ends and the next begins counts too.</summary>
    public static string Of(IEnumerable<string> texts) =>
        Whole(string.Concat(texts.Select(t => FormattableString.Invariant($"{t.Length}:{t};"))))[..16];

    /// <summary>What a coach's prose says and shows: the places in its file do not count.</summary>
    public static IEnumerable<string> Parts(Prose prose)
    {
        foreach (var block in prose.Blocks)
        {
            yield return block switch
            {
                Block.Heading heading => FormattableString.Invariant($"heading {heading.Level}"),
                Block.Paragraph => "paragraph",
                Block.Listing { Numbered: true } => "numbered",
                Block.Listing => "list",
                _ => throw new NotSupportedException(block.GetType().Name),
            };
            foreach (var text in new Prose([block]).Texts())
            {
                yield return Prose.PlainOf(text);
                foreach (var inline in Prose.Inlines(text))
                    yield return Kind(inline);
            }
        }
    }

    /// <summary>A picture or a clip, by its path and what it shows; the bytes of the file do not count.</summary>
    public static string Kind(Inline inline) =>
        inline switch
        {
            Inline.Emphasis emphasis => emphasis.Strong ? "strong" : "emphasis",
            Inline.Link link => link.Address,
            Inline.ExerciseLink link => link.Exercise.Text,
            Inline.Picture picture => $"{picture.Path} {picture.Shows}",
            Inline.Clip clip => $"{clip.Path} {clip.Still} {clip.Shows}",
            _ => "",
        };
}
