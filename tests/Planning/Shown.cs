using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>A plan in lines that can be read beside dose-line.md.</summary>
internal static class Shown
{
    /// <summary>"GetReady L 5", "Hold L 30", "Rest - 20".</summary>
    public static string[] Steps(this PlannedWeeks weeks) =>
        [.. weeks.Steps.Select(s => $"{s.Kind} {Letter(s.Side)} {s.Seconds.Value}")];

    public static PlannedWeeks Only(this Plan plan, int session = 1) => Assert.Single(plan.Sessions[session - 1].Weeks);

    /// <summary>"1 2: 2 x hold 30 s, rest 20 s, each side"</summary>
    public static string[] Doses(this PlannedUse use) => [.. use.Doses.Select(d => $"{string.Join(' ', d.Weeks)}: {d.Dose}")];

    private static string Letter(Side? side) =>
        side switch
        {
            Side.Left => "L",
            Side.Right => "R",
            _ => "-",
        };
}
