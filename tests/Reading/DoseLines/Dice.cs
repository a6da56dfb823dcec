using CsCheck;

namespace Gradus.Tests.Reading;

/// <summary>Choices that are the same on every run.</summary>
internal sealed class Dice(ulong seed)
{
    private readonly PCG numbers = new(1, seed);

    /// <summary>From low to high, both included.</summary>
    public int Between(int low, int high) => low + (int)numbers.Next((uint)(high - low + 1));

    public bool OneIn(int chances) => Between(1, chances) == 1;

    public T Pick<T>(params T[] choices) => choices[Between(0, choices.Length - 1)];
}
