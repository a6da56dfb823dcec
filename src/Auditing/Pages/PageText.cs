using System.Text;

namespace Gradus.Auditing;

/// <summary>All lines of a page, shown or hidden, as one text, to look for others in.</summary>
internal sealed class PageText
{
    private readonly string all;
    private readonly int[] starts;

    public PageText(PageSeen page)
    {
        var text = new StringBuilder();
        starts = new int[page.Lines.Count];
        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] = text.Length;
            text.Append(page.Lines[i].Text).Append('\n');
        }

        all = text.ToString();
    }

    /// <summary>The index of the first line that holds the text, not torn out of a longer word; null where none does.</summary>
    public int? Find(string text)
    {
        foreach (var at in WholeWords.Places(all, text))
        {
            var line = Array.BinarySearch(starts, at);
            return line >= 0 ? line : ~line - 1;
        }

        return null;
    }
}
