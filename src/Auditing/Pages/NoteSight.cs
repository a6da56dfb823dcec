using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Looks for what a page says beside its cautions: a note, which is a title and below it each of its sentences as a line
/// of its own, or one sentence by itself.</summary>
internal static class NoteSight
{
    /// <summary>How many letters are enough to know a line again that was altered behind them.</summary>
    private const int Likeness = 12;

    /// <summary>How much pain is all right, and who must leave something out, after the day on which that was asked.</summary>
    public static IEnumerable<Sighting> Of(Duty duty, PageSigns signs)
    {
        if (signs.Pain is { } pain)
            yield return Of(duty, $"the note '{pain.Title}'", [.. pain.Lines()]);
        if (signs.Asked.Length > 0)
            yield return Of(duty, "the day of the answers about health", [signs.Asked]);
        foreach (var note in signs.Notes)
            yield return Of(duty, $"the note on '{note.Title}'", [.. note.Lines()]);
    }

    private static Sighting Of(Duty duty, string what, string[] lines)
    {
        var (all, shown) = (duty.Page.Lines, duty.Page.Shown);
        var places = PlacesIn(shown, lines).ToArray();
        if (places.Length > 0)
            return places[0] < duty.FirstInstruction
                ? new Sighting.InPlace(what, shown[places[0]].At)
                : new Sighting.After(what, duty.Instruction, shown[places[0]].At);
        foreach (var at in PlacesIn(all, lines))
            if (all.Skip(at).Take(lines.Length).FirstOrDefault(l => l.HiddenBy is not null) is { } hidden)
                return new Sighting.Hidden(what, hidden.HiddenBy ?? "", hidden.At);
        foreach (var (at, line) in shown.Index())
            if (Lost(shown, at, lines) is { } lost)
                return new Sighting.Altered(what, $"\"{lost}\" is missing or other", line.At);
        return new Sighting.Missing(what, duty.Page.At);
    }

    private static IEnumerable<int> PlacesIn(Series<TextLine> page, string[] lines) =>
        Enumerable.Range(0, page.Count).Where(at => StandAt(page, at, lines));

    private static bool StandAt(Series<TextLine> page, int at, string[] lines)
    {
        for (var i = 0; i < lines.Length; i++)
            if (Text(page, at + i) != lines[i])
                return false;
        return true;
    }

    private static string Text(Series<TextLine> page, int at) => at < page.Count ? page[at].Text : "";

    /// <summary>The first line that is other at that place; null where they do not seem to be meant there.</summary>
    private static string? Lost(Series<TextLine> page, int at, string[] lines)
    {
        var meant =
            lines.Length == 1
                ? IsLike(page[at].Text, lines[0])
                : page[at].Text == lines[0] && lines.Skip(1).Any(l => IsLike(Text(page, at + 1), l));
        return meant ? lines.Index().FirstOrDefault(l => Text(page, at + l.Index) != l.Item).Item : null;
    }

    private static bool IsLike(string text, string line) =>
        text.StartsWith(line[..Math.Min(Likeness, line.Length)], StringComparison.Ordinal);
}
