namespace Gradus.Domain;

/// <summary>Something that rides along with a value and does not count in it, such as the place where it was written: any two are
/// equal.</summary>
public sealed record Aside<T>(T Value)
{
    public bool Equals(Aside<T>? other) => other is not null;

    public override int GetHashCode() => 0;

    /// <summary>Empty, so that nothing that prints a value prints what does not count in it.</summary>
    public override string ToString() => "";
}

public static class Aside
{
    public static Aside<T> Of<T>(T value) => new(value);
}
