using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The sessions that a log tells of, each once.</summary>
public static class LogLines
{
    /// <summary>By day, of one day in the order of the log: a clock may have been changed. Of lines that tell of the same session
    /// the last counts; an alarm that a line before it told stays, for silence takes nothing back.</summary>
    public static Series<LogEntry> Of(Series<LogEntry> log)
    {
        var kept = new List<LogEntry>();
        var places = new Dictionary<object, int>();
        foreach (var entry in log)
        {
            if (places.TryAdd(LogBook.KeyOf(entry), kept.Count))
                kept.Add(entry);
            else
                kept[places[LogBook.KeyOf(entry)]] = entry with
                {
                    Alarm = entry.Alarm ?? kept[places[LogBook.KeyOf(entry)]].Alarm,
                };
        }

        return kept.OrderBy(e => e.Day).ToSeries();
    }
}
