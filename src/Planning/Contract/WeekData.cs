using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What is said week by week, as a page writes it for its script: "1 2=30 seconds;3=45 seconds".</summary>
public static class WeekData
{
    public static string Of(Inline.Figure figure)
    {
        var runs = new List<(List<int> Weeks, string Said)>();
        foreach (var (week, said) in figure.ByWeek)
        {
            if (runs is [.., var last] && last.Said == said)
                last.Weeks.Add(week);
            else
                runs.Add(([week], said));
        }

        return string.Join(';', runs.Select(r => $"{Numbers(r.Weeks)}={r.Said}"));
    }

    /// <summary>Numbers as an attribute has them.</summary>
    public static string Numbers(IEnumerable<int> weeks) =>
        string.Join(' ', weeks.Select(w => FormattableString.Invariant($"{w}")));
}
