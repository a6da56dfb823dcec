using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Prose → HTML: paragraphs, lists and headings, nothing a coach wrote ever as markup.</summary>
internal static class ProseHtml
{
    /// <param name="topLevel">The level of a heading that stands under no other; deeper ones follow without a gap, down to the
    /// sixth.</param>
    /// <param name="here">What the ids on its page begin with.</param>
    /// <param name="words">What is said around a clip.</param>
    public static Html Of(Prose prose, int topLevel, string here, Words words)
    {
        var html = new StringBuilder();
        var open = new Stack<int>();
        Write(prose, html, LevelOf, here, words);
        return new(html.ToString());

        // A heading stands under those before it that the coach wrote with fewer hashes, however many those are.
        int LevelOf(int written)
        {
            while (open.TryPeek(out var above) && above >= written)
                open.Pop();
            open.Push(written);
            return Math.Min(6, topLevel + open.Count - 1);
        }
    }

    /// <summary>Running text by itself, without a paragraph around it.</summary>
    public static Html Of(Series<Inline> text, string here, Words words)
    {
        var html = new StringBuilder();
        Write(text, html, here, words);
        return new(html.ToString());
    }

    private static void Write(Prose prose, StringBuilder html, Func<int, int> levelOf, string here, Words words)
    {
        foreach (var block in prose.Blocks)
        {
            if (block is Block.Heading heading)
                Write($"h{levelOf(heading.Level)}", heading.Text, html, here, words);
            else if (block is Block.Paragraph paragraph)
                Write("p", paragraph.Text, html, here, words);
            else if (block is Block.Listing list)
                Write(list, html, levelOf, here, words);
        }
    }

    private static void Write(Block.Listing list, StringBuilder html, Func<int, int> levelOf, string here, Words words)
    {
        var tag = list.Numbered ? "ol" : "ul";
        html.Append('<').Append(tag).Append(">\n");
        foreach (var item in list.Items)
        {
            html.Append(item.Asks.Length > 0 ? $"<li {PageData.Asks}=\"{Html.Escape(item.Asks)}\">" : "<li>");
            if (item.Blocks is [Block.Paragraph only])
                Write(only.Text, html, here, words);
            else
                Write(item, html, levelOf, here, words);
            html.Append("</li>\n");
        }

        html.Append("</").Append(tag).Append(">\n");
    }

    private static void Write(string tag, Series<Inline> text, StringBuilder html, string here, Words words)
    {
        html.Append('<').Append(tag).Append('>');
        Write(text, html, here, words);
        html.Append("</").Append(tag).Append(">\n");
    }

    private static void Write(Series<Inline> text, StringBuilder html, string here, Words words)
    {
        foreach (var inline in text)
        {
            if (inline is Inline.Plain plain)
                html.Append(Html.Escape(plain.Words));
            else if (inline is Inline.Figure figure)
                html.Append(
                    CultureInfo.InvariantCulture,
                    $"<span {PageData.ByWeek}=\"{Html.Escape(WeekData.Of(figure))}\">{Html.Escape(figure.Words)}</span>"
                );
            else if (inline is Inline.Term term)
                html.Append(
                    CultureInfo.InvariantCulture,
                    $"<a class=\"{PageClass.Term}\" href=\"#{Html.Escape(here)}{PageId.Term(term)}\">"
                        + $"{Html.Escape(term.Words)}</a>"
                );
            else if (inline is Inline.Emphasis emphasis)
                Within(emphasis.Strong ? "strong" : "em", "", emphasis.Text, html, here, words);
            else if (inline is Inline.Link link)
                Within("a", $" href=\"{Html.Escape(link.Address)}\"", link.Text, html, here, words);
            else if (inline is Inline.ExerciseLink exercise)
                Within("a", $" href=\"{PagePath.Exercise(exercise.Exercise)}\"", exercise.Text, html, here, words);
            else if (inline is Inline.Picture picture)
                html.Append(PictureHtml.Of(picture.Sizes, picture.Shows, " loading=\"lazy\""));
            else if (inline is Inline.Drawn drawn)
                html.Append(FigureHtml.Of(drawn, words));
            else if (inline is Inline.Clip clip)
                html.Append(ClipHtml.Of(clip, words));
            else
                throw new NotSupportedException($"{inline.GetType().Name} cannot stand on a page.");
        }
    }

    private static void Within(string tag, string attributes, Series<Inline> text, StringBuilder html, string here, Words words)
    {
        html.Append('<').Append(tag).Append(attributes).Append('>');
        Write(text, html, here, words);
        html.Append("</").Append(tag).Append('>');
    }
}
