using System.Text;

namespace Gradus.Rendering;

/// <summary>Text that is HTML already. Whatever is not of this type is escaped when a template writes it.</summary>
internal sealed record Html(string Markup)
{
    /// <summary>Text as it may stand in an element or in a quoted attribute.</summary>
    public static string Escape(string text)
    {
        if (text.AsSpan().IndexOfAny("&<>\"'") < 0)
            return text;
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }

    public override string ToString() => Markup;
}
