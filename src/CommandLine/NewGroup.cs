using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A new group, of those who follow the practice's first shared programme that somebody follows.</summary>
internal static class NewGroup
{
    /// <exception cref="IOException">Nobody follows a shared programme.</exception>
    public static string Text(string id, Practice practice)
    {
        var followers = practice.Clients.ToLookup(c => c.Programme.From?.Programme.Value ?? "", StringComparer.Ordinal);
        if (practice.Programmes.FirstOrDefault(p => followers[p.Id].Any() && p.Sessions.Count > 0) is not { } programme)
            throw new IOException(
                "Who trains together follows a shared programme, and nobody here does. 'gradus new programme ID' begins one; "
                    + "'from: ID' in a client's programme.md follows it."
            );
        return StarterFiles.Text(
            "new/group.yaml",
            ("id", id),
            ("title", StarterFiles.Title(id)),
            ("programme", programme.Id),
            ("session", $"\"{programme.Sessions[0].Name}\""),
            ("clients", string.Join(", ", followers[programme.Id].Take(Group.Most).Select(c => c.Id)))
        );
    }
}
