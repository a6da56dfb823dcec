using System.CommandLine.Parsing;
using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>One of several parts of the clients, so that several machines share the work: the same on each of them, and as large
/// as the others.</summary>
/// <param name="Number">From 1 to <paramref name="Parts"/>.</param>
/// <param name="Parts">How many there are.</param>
internal sealed record Share(int Number, int Parts)
{
    /// <summary>More would be more machines than anybody has.</summary>
    private const int MostParts = 1000;

    /// <summary>What belongs to no client is said by one of them.</summary>
    public bool IsFirst => Number == 1;

    /// <summary>Every so many-th of the clients.</summary>
    /// <param name="clients">In the order of their ids.</param>
    public Series<ClientId> Of(Series<ClientId> clients) => clients.Where((_, i) => i % Parts == Number - 1).ToSeries();

    /// <summary>"2/4", the second of four.</summary>
    public static Share? Read(ArgumentResult result)
    {
        var said = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (
            said.Split('/') is [var number, var parts]
            && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var one)
            && int.TryParse(parts, NumberStyles.None, CultureInfo.InvariantCulture, out var all)
            && all is >= 1 and <= MostParts
            && one >= 1
            && one <= all
        )
            return new(one, all);
        result.AddError($"'{said}' is no part. Write which one and of how many, as 2/4; there may be {MostParts} at most.");
        return null;
    }
}
