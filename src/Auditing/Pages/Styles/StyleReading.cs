using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What is wrong with a stylesheet, judged by itself; the same for whichever site has it.</summary>
/// <param name="Wrongs">What is not on the list, one for each cause, in the order of their first places.</param>
/// <param name="Contrasts">The pairs of its colours that differ too little.</param>
/// <param name="Asks">Of what some sheet of the site must say (<see cref="KnownStyles.Required"/>), what this one
/// makes needed, and where.</param>
/// <param name="Says">And what it says.</param>
internal sealed record StyleReading(
    Series<StyleWrong> Wrongs,
    Series<StyleContrast> Contrasts,
    Series<(int Required, int Line, int Column)> Asks,
    Series<int> Says
);

/// <param name="Why">A sentence.</param>
/// <param name="Help">What to write instead.</param>
/// <param name="Count">How often it is so.</param>
internal sealed record StyleWrong(int Line, int Column, string Why, string Help, int Count)
{
    /// <summary>The lines of the other places, as many as help.</summary>
    public Series<int> Others { get; init; } = [];
}

/// <param name="Text">As "--soft #777777".</param>
/// <param name="Contrast">What it is, from 1 to 21.</param>
/// <param name="Asked">What it should at least be.</param>
/// <param name="Where">As "on a dark screen"; empty where the ground says it.</param>
internal sealed record StyleContrast(
    int Line,
    int Column,
    string Selector,
    string Text,
    string Ground,
    double Contrast,
    double Asked,
    string Where
);
