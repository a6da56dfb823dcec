using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>The records of a target, in the folder <c>.gradus-made</c> of it. They only save work: one that is damaged, or of
/// something else, counts as none, and nothing is lost with all of them.</summary>
/// <param name="target">The folder that the sites stand in.</param>
public sealed class SiteRecords(string target)
{
    private const string FolderName = Places.Mark + "made";

    /// <summary>In bytes; what was found on a site does not come near it.</summary>
    private const long Largest = 16 * 1024 * 1024;

    /// <summary>Hexadecimal digits of the hash that stands in front, and the end of its line.</summary>
    private const int Front = 65;

    private readonly string folder = Path.Combine(target, FolderName);

    /// <summary>What is recorded of a client's site; null where nothing is that is whole.</summary>
    public SiteRecord? Read(ClientId client, Rendition rendition) => Read(PathOf(client, rendition), SiteRecord.Parse);

    /// <summary>What is recorded of a client's sources; null where nothing is that is whole.</summary>
    public ClientRecord? Read(ClientId client) => Read(PathOf(client), ClientRecord.Parse);

    private static T? Read<T>(string path, Func<ReadOnlyMemory<byte>, T> parse)
        where T : class
    {
        try
        {
            if (new FileInfo(path) is not { Exists: true, LinkTarget: null, Length: > Front and <= Largest })
                return null;
            var bytes = File.ReadAllBytes(path);
            return bytes.AsSpan(0, Front).SequenceEqual(FrontOf(bytes.AsSpan(Front))) ? parse(bytes.AsMemory(Front)) : null;
        }
        // Whoever writes a hash that fits may write anything behind it.
        catch (Exception trouble)
            when (trouble
                    is IOException
                        or UnauthorizedAccessException
                        or JsonException
                        or InvalidOperationException
                        or KeyNotFoundException
                        or FormatException
                        or ArgumentException
            )
        {
            return null;
        }
    }

    /// <summary>Why a record could not be kept, as the end of a sentence; null where all were.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Puts the record in its place; of the same site it goes on telling of the forms that it was handed over in before.
    /// What is cut off on the way leaves the one of before, or one that counts as none.</summary>
    public void Keep(ClientId client, Rendition rendition, SiteRecord record)
    {
        if (Read(client, rendition) is { } before && before.Key == record.Key && before.Site == record.Site)
            record = record with
            {
                Standing = [.. record.Standing, .. before.Standing.ExceptBy(record.Standing.Select(s => s.Form), s => s.Form)],
            };
        Keep(PathOf(client, rendition), record.Print());
    }

    /// <summary>Puts the record in its place.</summary>
    public void Keep(ClientId client, ClientRecord record) => Keep(PathOf(client), record.Print());

    private void Keep(string path, byte[] bytes)
    {
        var unfinished = Path.Combine(folder, Places.NewMark + Path.GetFileName(path));
        try
        {
            Directory.CreateDirectory(folder);
            File.WriteAllBytes(unfinished, [.. FrontOf(bytes), .. bytes]);
            File.Move(unfinished, path, overwrite: true);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            Leftovers.TryRemove(unfinished);
            Trouble ??= DiskTrouble.ReasonOf(cause);
        }
    }

    /// <summary>Removes what is recorded of clients of whom no site stands there any more: it may tell of them.</summary>
    public void Forget(Forms forms)
    {
        if (!Directory.Exists(folder))
            return;
        foreach (var path in Directory.EnumerateFiles(folder).ToArray())
        {
            var name = Path.GetFileName(path);
            var id = name[..Math.Max(0, name.IndexOf('.', StringComparison.Ordinal))];
            if (!Id.IsValid(id) || forms.Standing(new(id), target).Count == 0)
                Leftovers.TryRemove(path);
        }
    }

    private string PathOf(ClientId client, Rendition rendition) =>
        Path.Combine(folder, $"{client}.{rendition.ToString().ToLowerInvariant()}");

    private string PathOf(ClientId client) => Path.Combine(folder, $"{client}.sources");

    private static byte[] FrontOf(ReadOnlySpan<byte> bytes) =>
        Encoding.ASCII.GetBytes(Convert.ToHexStringLower(SHA256.HashData(bytes)) + "\n");
}
