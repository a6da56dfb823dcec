using System.Text;
using Gradus.Domain;
using Markdig;
using Markdig.Syntax;

namespace Gradus.Reading;

/// <summary>A rule's page → HTML, to be shown inside another page.</summary>
public static class RulePageMarkup
{
    private const string Fence = "```";

    private static readonly MarkdownPipeline CommonMark = new MarkdownPipelineBuilder().DisableHtml().Build();

    /// <param name="heading">The level of its first heading, from 1; the others follow.</param>
    public static string Of(RulePage page, int heading)
    {
        var document = Markdig.Markdown.Parse(Named(page.Text), CommonMark);
        foreach (var block in document.Descendants<HeadingBlock>())
            block.Level += heading - 1;
        return document.ToHtml(CommonMark);
    }

    /// <summary>What a block is, which stands behind its fence and would be lost, said in a line above it.</summary>
    private static string Named(string text)
    {
        var named = new StringBuilder(text.Length + 256);
        foreach (var line in text.Split('\n'))
        {
            if (line.StartsWith(Fence, StringComparison.Ordinal) && line.Length > Fence.Length)
                named.Append(
                    line[Fence.Length..].Split(' ', 2) switch
                    {
                        ["edit", var path] => $"What is changed in `{path}`:\n\n{Fence}\n",
                        ["finds"] => $"What is then found:\n\n{Fence}\n",
                        ["weighs", var path] => $"How many KiB `{path}` has:\n\n{Fence}\n",
                        [_, var path] => $"What `{path}` holds:\n\n{Fence}\n",
                        _ => line + "\n",
                    }
                );
            else
                named.Append(line).Append('\n');
        }

        return named.ToString();
    }
}
