using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Looks for one caution on one page: its title and each of its lines as lines of their own, together, under the name of its
/// kind, followed by the exercises it belongs to.</summary>
internal static class CautionSight
{
    public static Sighting Of(Plan plan, Duty duty, PlannedCaution caution)
    {
        var what = $"the caution '{caution.Title}'";
        var shown = duty.Page.Shown;
        var lines = caution.Lines().ToArray();
        var places = Enumerable.Range(0, shown.Count).Where(i => shown[i].Text == lines[0]).ToArray();
        var faults = places.Select(i => Fault(plan, shown, i, lines, caution)).ToArray();
        for (var i = 0; i < places.Length; i++)
            if (faults[i] is null && places[i] < duty.FirstInstruction) return new Sighting.InPlace(what, shown[places[i]].At);
        for (var i = 0; i < places.Length; i++)
            if (faults[i] is null) return new Sighting.After(what, shown[duty.FirstInstruction].Text, shown[places[i]].At);
        if (places.Length > 0) return new Sighting.Altered(what, faults[0] ?? "", shown[places[0]].At);
        if (duty.Page.Lines.FirstOrDefault(l => l.HiddenBy is not null && l.Text == lines[0]) is { } hidden)
            return new Sighting.Hidden(what, hidden.HiddenBy ?? "", hidden.At);
        if (shown.FirstOrDefault(l => lines.Contains(l.Text)) is { } rest) return new Sighting.Altered(what, "its title is missing or other", rest.At);
        return new Sighting.Missing(what, Location.Whole(duty.Page.Path));
    }

    /// <summary>What is wrong with the caution whose title stands at that line; null where nothing is.</summary>
    private static string? Fault(Plan plan, Series<TextLine> shown, int at, string[] lines, PlannedCaution caution)
    {
        for (var i = 1; i < lines.Length; i++)
            if (at + i >= shown.Count || shown[at + i].Text != lines[i]) return $"under its title the text \"{Short(lines[i])}\" is missing or other";
        if (KindAbove(plan, shown, at) != caution.Kind) return $"it does not stand under \"{plan.Words.Say(KindKey(caution.Kind))}\"";
        var below = at + lines.Length < shown.Count ? shown[at + lines.Length].Text : "";
        var unnamed = caution.Exercises.Select(e => plan.Exercise(e).Title).FirstOrDefault(title => !below.Contains(title, StringComparison.Ordinal));
        return unnamed is null ? null : $"it does not say that it belongs to '{unnamed}'";
    }

    private static CautionKind? KindAbove(Plan plan, Series<TextLine> shown, int at)
    {
        for (var i = at - 1; i >= 0; i--)
        {
            foreach (var kind in Enum.GetValues<CautionKind>())
                if (shown[i].Text == plan.Words.Say(KindKey(kind))) return kind;
        }

        return null;
    }

    private static string KindKey(CautionKind kind) => "kind-" + Kebab.Of(kind.ToString());

    private static string Short(string text) => text.Length <= 60 ? text : text[..57] + "...";
}
