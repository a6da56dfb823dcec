using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>A theme that cannot be filled.</summary>
internal sealed class ThemeException(Location at, string message) : Exception(message)
{
    public Location At { get; } = at;
}
