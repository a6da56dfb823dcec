namespace Gradus.Tests.House;

/// <summary>A block between two lines of <c>```</c> on a page of ours.</summary>
/// <param name="Name">What stands behind the first of them: "dose", "weeks 6".</param>
internal sealed record FencedBlock(string Name, IReadOnlyList<string> Lines)
{
    private const string Fence = "```";

    public string Text => string.Join('\n', Lines);

    public static IEnumerable<FencedBlock> On(string page)
    {
        string? name = null;
        var inside = new List<string>();
        foreach (var line in page.Split('\n'))
        {
            if (!line.StartsWith(Fence, StringComparison.Ordinal))
            {
                inside.Add(line);
                continue;
            }

            if (name is not null)
                yield return new(name, [.. inside]);
            name = name is null ? line[Fence.Length..] : null;
            inside.Clear();
        }

        if (name is not null)
            throw new InvalidOperationException($"The block '{name}' never ends.");
    }
}
