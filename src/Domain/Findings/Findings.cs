using System.Collections;

namespace Gradus.Domain;

/// <summary>Everything found in one run, collected as it is met.</summary>
public sealed class Findings : IEnumerable<Finding>
{
    private readonly List<Finding> found = [];

    // Every client is asked after twice, so errors are sorted as they come, and not looked for among all findings each time.
    private readonly HashSet<string> wrongClients = new(StringComparer.Ordinal);
    private readonly HashSet<string> wrongFiles = new(StringComparer.Ordinal);

    public int Count => found.Count;

    public void Add(Finding finding)
    {
        found.Add(finding);
        if (finding.Level != Level.Error)
            return;
        if ((finding.Client?.Text ?? Reach.OwnerOf(finding.At.File)) is { } client)
            wrongClients.Add(client);
        else
            wrongFiles.Add(finding.At.File);
    }

    public void AddRange(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
            Add(finding);
    }

    /// <summary>Whether an error touches that client, so that no page may be made or handed over.</summary>
    public bool Block(ClientId client, Reach reach) =>
        wrongClients.Contains(client.Text) || wrongFiles.Any(file => reach.Touches(file, client));

    /// <summary>By level (errors first), file, line, column, rule and client; what is said twice stands once.</summary>
    public IEnumerable<Finding> InOrder() =>
        found
            .Distinct()
            .OrderBy(f => f.Level)
            .ThenBy(f => f.At)
            .ThenBy(f => f.Rule.Text, StringComparer.Ordinal)
            .ThenBy(f => f.Client?.Text, StringComparer.Ordinal);

    public IEnumerator<Finding> GetEnumerator() => found.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
