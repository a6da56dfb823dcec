using System.Buffers;
using System.Text;

namespace Gradus.Auditing;

/// <summary>The texts of a page that the strict reader knows how to read; null for any other.</summary>
internal static class StrictText
{
    /// <summary>Letters that a browser reads as others, or that end a text for it: all but tabs and ends of lines that a file of
    /// text does not have.</summary>
    private static readonly SearchValues<char> Odd = SearchValues.Create([
        .. Enumerable
            .Range(0, 0x20)
            .Concat(Enumerable.Range(0x7f, 0x21))
            .Select(c => (char)c)
            .Where(c => c is not ('\n' or '\t')),
        '\ufeff',
        '\ufffd',
        '\ufffe',
        '\uffff',
    ]);

    /// <summary>The references that Gradus writes, and those of single letters that a text may have as well.</summary>
    private static readonly (string Reference, char Letter)[] References =
    [
        ("&#39;", '\''),
        ("&amp;", '&'),
        ("&quot;", '"'),
        ("&lt;", '<'),
        ("&gt;", '>'),
        ("&nbsp;", '\u00a0'),
        ("&shy;", '\u00ad'),
        ("&#34;", '"'),
        ("&#43;", '+'),
    ];

    public static bool IsOdd(string html) => html.AsSpan().IndexOfAny(Odd) >= 0;

    /// <summary>Between two tags.</summary>
    public static string? Of(ReadOnlySpan<char> written) => written is "\n" ? "\n" : Read(written);

    /// <summary>Of an attribute.</summary>
    public static string? Value(ReadOnlySpan<char> written) => Read(written);

    /// <summary>Of a title or a field: nothing in it is a tag, whatever it looks like, and a first end of a line does not
    /// count.</summary>
    public static string? Words(ReadOnlySpan<char> written) =>
        written.Contains('<') || written.StartsWith("\n") ? null : Read(written);

    /// <summary>Of a style or a script, where nothing is a reference. What begins like a comment would change how it
    /// ends.</summary>
    public static string? Raw(ReadOnlySpan<char> written) =>
        written.Contains("<!--", StringComparison.Ordinal) ? null : written.ToString();

    private static string? Read(ReadOnlySpan<char> written)
    {
        var next = written.IndexOf('&');
        if (next < 0)
            return written.ToString();
        var read = new StringBuilder(written.Length);
        while (next >= 0)
        {
            read.Append(written[..next]);
            written = written[next..];
            if (LetterOf(written, out var length) is not { } letter)
                return null;
            read.Append(letter);
            written = written[length..];
            next = written.IndexOf('&');
        }

        return read.Append(written).ToString();
    }

    private static char? LetterOf(ReadOnlySpan<char> written, out int length)
    {
        foreach (var (reference, letter) in References)
            if (written.StartsWith(reference, StringComparison.Ordinal))
            {
                length = reference.Length;
                return letter;
            }

        length = 0;
        return null;
    }
}
