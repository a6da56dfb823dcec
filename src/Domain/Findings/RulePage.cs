using System.Reflection;

namespace Gradus.Domain;

/// <summary>The documentation page of a rule, which is also its test.</summary>
/// <param name="Text">Markdown: a heading with the rule's id, a paragraph that sums it up, examples that are found and that are
/// not.</param>
public sealed record RulePage(RuleId Rule, string Text)
{
    /// <summary>The first line below the heading.</summary>
    public string Summary => Text.Split('\n').Skip(1).FirstOrDefault(line => line.Length > 0) ?? "";

    /// <summary>How much the rule's findings weigh; where they differ, what the page says first.</summary>
    public Level Level =>
        Enum.Parse<Level>(new string([.. Text.Split("\nLevel: ")[1].TakeWhile(char.IsAsciiLetter)]), ignoreCase: true);

    /// <summary>The page built into a room under the name of the rule's class.</summary>
    public static RulePage Of(RuleId rule, Assembly room) => new(rule, BuiltIn.Text(room, NameOf(rule) + ".md"));

    private static string NameOf(RuleId rule) =>
        string.Concat(rule.Text.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
}
