using System.Collections;

namespace Gradus.Domain;

/// <summary>Everything found in one run, collected as it is met.</summary>
public sealed class Findings : IEnumerable<Finding>
{
    private readonly List<Finding> found = [];

    public int Count => found.Count;

    public void Add(Finding finding) => found.Add(finding);

    public void AddRange(IEnumerable<Finding> findings) => found.AddRange(findings);

    /// <summary>Whether an error touches that client, so that no page may be made or handed over.</summary>
    public bool Block(ClientId client, Reach reach) =>
        found.Any(f => f.Level == Level.Error && (f.Client is { } about ? about == client : reach.Touches(f.At.File, client)));

    /// <summary>By level (errors first), file, line, column, rule and client; what is said twice stands once.</summary>
    public IEnumerable<Finding> InOrder() => found.Distinct()
        .OrderBy(f => f.Level).ThenBy(f => f.At)
        .ThenBy(f => f.Rule.Text, StringComparer.Ordinal).ThenBy(f => f.Client?.Text, StringComparer.Ordinal);

    public IEnumerator<Finding> GetEnumerator() => found.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
