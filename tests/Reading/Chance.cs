using CsCheck;

namespace Gradus.Tests.Reading;

/// <summary>Choices that are the same on every run.</summary>
internal sealed class Chance(ulong seed)
{
    private readonly PCG numbers = new(1, seed);

    /// <summary>From 0 to one below the number of choices.</summary>
    public int Below(int choices) => (int)numbers.Next((uint)choices);

    public T Of<T>(IReadOnlyList<T> choices) => choices[Below(choices.Count)];
}
