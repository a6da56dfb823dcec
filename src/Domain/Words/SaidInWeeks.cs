namespace Gradus.Domain;

/// <summary>What is said of weeks that follow each other in some list of them.</summary>
/// <param name="Weeks">In rising order, at least one.</param>
public sealed record SaidInWeeks(Series<int> Weeks, string Said)
{
    /// <summary>Weeks that say the same one after another, together.</summary>
    /// <param name="weeks">In rising order.</param>
    public static Series<SaidInWeeks> Of(IEnumerable<(int Week, string Said)> weeks)
    {
        var runs = new List<SaidInWeeks>();
        foreach (var (week, said) in weeks)
        {
            if (runs is [.., var last] && last.Said == said)
                runs[^1] = last with { Weeks = [.. last.Weeks, week] };
            else
                runs.Add(new([week], said));
        }

        return runs.ToSeries();
    }
}
