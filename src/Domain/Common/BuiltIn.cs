using System.Reflection;
using System.Text;

namespace Gradus.Domain;

/// <summary>The files that are built into a room.</summary>
public static class BuiltIn
{
    public static IEnumerable<string> Names(Assembly room) => room.GetManifestResourceNames().Order(StringComparer.Ordinal);

    /// <exception cref="InvalidOperationException">There is no such file in that room.</exception>
    public static byte[] Bytes(Assembly room, string name)
    {
        using var stream = room.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"'{name}' is not built in.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    public static string Text(Assembly room, string name) => Encoding.UTF8.GetString(Bytes(room, name));
}
