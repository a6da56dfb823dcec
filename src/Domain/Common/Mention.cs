namespace Gradus.Domain;

/// <summary>Something named in a file, with the place where it is named.</summary>
public sealed record Mention<T>(T Value, Location At)
{
    public override string ToString() => $"{Value}";
}
