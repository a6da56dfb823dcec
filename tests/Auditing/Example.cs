using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>One example of a rule's page: what is changed in the little practice, and everything that is then found.</summary>
/// <param name="Heading">As the page has it: "Found: a hold that is too long".</param>
/// <param name="Finds">Place, level, rule and client; the sentence; the remedy; and an empty line between findings. Empty for
/// nothing.</param>
internal sealed record Example(string Heading, bool IsFound, Series<Edit> Edits, string Finds)
{
    /// <summary>The examples of a page, in order: one below each heading that begins with "Found" or "Not found".</summary>
    public static IEnumerable<Example> On(RulePage page)
    {
        foreach (var part in ("\n" + page.Text).Split("\n## ").Skip(1))
        {
            var lines = part.Split('\n');
            var isFound = lines[0].StartsWith("Found", StringComparison.Ordinal);
            if (!isFound && !lines[0].StartsWith("Not found", StringComparison.Ordinal))
                throw new InvalidOperationException($"{page.Rule}: the heading '{lines[0]}' is no example.");
            var blocks = BlocksOf(lines).ToArray();
            var finds = blocks.Where(b => b.Name == "finds").ToArray();
            if (finds.Length > 1)
                throw new InvalidOperationException($"{page.Rule}: '{lines[0]}' says twice what is found.");
            yield return new(
                lines[0],
                isFound,
                blocks.Where(b => b.Name != "finds").Select(b => EditOf(page, b.Name, b.Lines)).ToSeries(),
                string.Join('\n', finds.SelectMany(b => b.Lines))
            );
        }
    }

    /// <summary>What is wrong with the example, in words; null where it comes true.</summary>
    public string? Fault(RuleId rule)
    {
        var found = Trial.Of(
            Edits,
            asPublished: rule == RuleId.Of(typeof(NotAsPublished)),
            ownTheme: rule == RuleId.Of(typeof(ThemeUnchecked))
        );
        var actual = Written(found);
        if (actual != Finds)
            return $"{rule}, \"{Heading}\"\n--- the page says\n{Said(Finds)}\n--- but found is\n{Said(actual)}\n---";
        return found.Any(f => f.Rule == rule) == IsFound
            ? null
            : $"{rule}, \"{Heading}\": the heading says one thing and the findings another.\n{Said(actual)}";
    }

    public static string Written(IEnumerable<Finding> findings) =>
        string.Join(
            "\n\n",
            findings.Select(f =>
                $"{f.At} {f.Level.ToString().ToLowerInvariant()} "
                + $"{f.Rule}{(f.Client is { } client ? $" [{client}]" : "")}\n{f.Sentence}\n{f.Help}"
            )
        );

    private static string Said(string findings) => findings.Length == 0 ? "nothing" : findings;

    private static Edit EditOf(RulePage page, string name, Series<string> lines) =>
        name.StartsWith("edit ", StringComparison.Ordinal) ? Edit.Of(name["edit ".Length..], lines)
        : name.StartsWith("weighs ", StringComparison.Ordinal) ? Edit.Weighing(name["weighs ".Length..], lines[0])
        : name.StartsWith("base64 ", StringComparison.Ordinal) ? Edit.OfBytes(name["base64 ".Length..], lines)
        : throw new InvalidOperationException(
            $"{page.Rule}: a block is called '{name}'; it is 'edit PATH', 'base64 PATH', 'weighs PATH' or 'finds'."
        );

    private static IEnumerable<(string Name, Series<string> Lines)> BlocksOf(string[] lines)
    {
        const string fence = "```";
        string? name = null;
        var inside = new List<string>();
        foreach (var line in lines)
        {
            if (!line.StartsWith(fence, StringComparison.Ordinal))
            {
                inside.Add(line);
                continue;
            }

            if (name is not null)
                yield return (name, inside.ToSeries());
            name = name is null ? line[fence.Length..] : null;
            inside.Clear();
        }

        if (name is not null)
            throw new InvalidOperationException($"The block '{name}' never ends.");
    }
}
