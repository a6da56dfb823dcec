using System.Text.Json;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The accessibility tree of Chromium: all that a screen reader has of a page. What is done here is done to what was
/// found in it by role and name.</summary>
internal sealed class SpokenTree
{
    private readonly ICDPSession session;

    private SpokenTree(ICDPSession session) => this.session = session;

    /// <param name="Id">By which the browser knows the element behind it.</param>
    /// <param name="Above">What it stands in, the nearest first.</param>
    internal sealed record Spoken(string Role, string Name, int Id, IReadOnlyList<Spoken> Above);

    public static async Task<SpokenTree> Of(IPage page)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Accessibility.enable");
        await session.SendAsync("DOM.enable");
        return new(session);
    }

    /// <summary>Everything that is given to a screen reader, in the order of the page.</summary>
    public async Task<IReadOnlyList<Spoken>> All()
    {
        var tree = await session.SendAsync("Accessibility.getFullAXTree");
        var (all, seen) = (new List<Spoken>(), new Dictionary<string, Spoken>(StringComparer.Ordinal));
        foreach (var node in tree!.Value.GetProperty("nodes").EnumerateArray())
        {
            IReadOnlyList<Spoken> above =
                node.TryGetProperty("parentId", out var parent) && seen.TryGetValue(parent.GetString()!, out var nearest)
                    ? [nearest, .. nearest.Above]
                    : [];
            var spoken = new Spoken(
                Text(node, "role"),
                Text(node, "name"),
                node.TryGetProperty("backendDOMNodeId", out var id) ? id.GetInt32() : 0,
                above
            );
            seen[node.GetProperty("nodeId").GetString()!] = spoken;
            if (!node.GetProperty("ignored").GetBoolean())
                all.Add(spoken);
        }

        return all;
    }

    public async Task<Spoken> One(string role, string name) => Only(await All(), role, name);

    /// <summary>Of what is in a group that is named so, the one with that role and name.</summary>
    public async Task<Spoken> In(string group, string role, string name) =>
        Only((await All()).Where(n => n.Above.Any(a => a.Role == "group" && a.Name == group)), role, name);

    /// <summary>What a screen reader does when somebody acts on it.</summary>
    public Task Do(Spoken node) => Call(node, "function () { this.click(); }");

    public async Task Do(string role, string name) => await Do(await One(role, name));

    private async Task Call(Spoken node, string what)
    {
        var resolved = await session.SendAsync("DOM.resolveNode", new() { ["backendNodeId"] = node.Id });
        await session.SendAsync(
            "Runtime.callFunctionOn",
            new()
            {
                ["objectId"] = resolved!.Value.GetProperty("object").GetProperty("objectId").GetString()!,
                ["functionDeclaration"] = what,
                ["userGesture"] = true,
            }
        );
    }

    private static Spoken Only(IEnumerable<Spoken> all, string role, string name)
    {
        var found = all.Where(n => n.Role == role && n.Name == name).ToArray();
        Assert.True(
            found.Length == 1,
            $"{found.Length} times {role} '{name}' in {string.Join("; ", all.Select(n => $"{n.Role} '{n.Name}'"))}"
        );
        return found[0];
    }

    private static string Text(JsonElement node, string name) =>
        node.TryGetProperty(name, out var part) && part.TryGetProperty("value", out var value) ? value.ToString() : "";
}
