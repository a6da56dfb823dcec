using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>A line walked over weeks, as the usual practice lets it grow.</summary>
internal static class Walked
{
    public const int GrowAtMost = 30;

    public const int Share = 60;

    /// <summary>The dose of each of so many full weeks.</summary>
    public static string[] Weeks(string line, int weeks) => [.. Doses(DoseOf.Line(line), weeks).Select(d => d.ToString())];

    public static Dose[] Doses(Dose envelope, int weeks)
    {
        var walk = Walk.Over(Ladder.Of(envelope, DoseOf.Usual), weeks, GrowAtMost);
        return [.. walk.Rungs.Select(k => walk.Ladder.Rungs[k].Dose)];
    }
}
