using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Looks for one caution on one page: its title, the exercises it belongs to and each of its lines as lines of
/// their own, together, under the name of its kind.</summary>
internal static class CautionSight
{
    /// <summary>What is written above the cautions of each kind.</summary>
    public static Series<(CautionKind Kind, string Heading)> Kinds(Plan plan) =>
        Enum.GetValues<CautionKind>().Select(kind => (kind, plan.Words.Say("kind-" + Kebab.Of(kind.ToString())))).ToSeries();

    public static Sighting Of(Duty duty, PageSign sign, Series<(CautionKind Kind, string Heading)> kinds)
    {
        var caution = sign.Caution;
        var what = $"the caution '{caution.Title}'";
        var (all, shown) = (duty.Page.Lines, duty.Page.Shown);
        var copies = CopiesIn(shown, sign, kinds).ToArray();
        var whole = copies.Where(c => c.Fault is null).ToArray();
        if (whole.Length > 0 && copies.FirstOrDefault(c => c.Fault is not null) is { } other)
            return new Sighting.Altered(what, other.Fault ?? "", shown[other.Title].At);
        if (whole.FirstOrDefault(c => c.Title < duty.FirstInstruction) is { } first)
            return new Sighting.InPlace(what, shown[first.Title].At);
        if (whole.Length > 0)
            return new Sighting.After(what, duty.Instruction, shown[whole[0].Title].At);
        if (
            CopiesIn(all, sign, kinds)
                .Where(c => c.Fault is null)
                .Select(c => c.HiddenIn(all))
                .FirstOrDefault(l => l is not null) is
            { } hidden
        )
            return new Sighting.Hidden(what, hidden.HiddenBy ?? "", hidden.At);
        if (copies.Length > 0)
            return new Sighting.Altered(what, copies[0].Fault ?? "", shown[copies[0].Title].At);
        if (all.FirstOrDefault(l => l.HiddenBy is not null && l.Text == caution.Title) is { } title)
            return new Sighting.Hidden(what, title.HiddenBy ?? "", title.At);
        if (shown.FirstOrDefault(l => caution.Body.Lines().Contains(l.Text)) is { } rest)
            return new Sighting.Altered(what, "its title is missing or other", rest.At);
        return new Sighting.Missing(what, duty.Page.At);
    }

    /// <summary>Every place where the caution's title stands.</summary>
    private static IEnumerable<Copy> CopiesIn(
        Series<TextLine> lines,
        PageSign sign,
        Series<(CautionKind Kind, string Heading)> kinds
    )
    {
        var body = sign.Lines().ToArray();
        for (var at = 0; at < lines.Count; at++)
            if (lines[at].Text == body[0])
                yield return CopyAt(at, lines, kinds, sign.Caution, body);
    }

    private static Copy CopyAt(
        int at,
        Series<TextLine> lines,
        Series<(CautionKind Kind, string Heading)> kinds,
        PlannedCaution caution,
        string[] body
    )
    {
        var (heading, kind) = KindAbove(kinds, lines, at);
        var copy = new Copy(heading, at, body.Length, null);
        for (var i = 1; i < body.Length; i++)
            if (at + i >= lines.Count || lines[at + i].Text != body[i])
                return copy with { Fault = $"under its title the text \"{Short(body[i])}\" is missing or other" };
        return kind == caution.Kind
            ? copy
            : copy with
            {
                Fault = $"it does not stand under \"{kinds.First(k => k.Kind == caution.Kind).Heading}\"",
            };
    }

    private static (int Heading, CautionKind? Kind) KindAbove(
        Series<(CautionKind Kind, string Heading)> kinds,
        Series<TextLine> lines,
        int at
    )
    {
        for (var i = at - 1; i >= 0; i--)
            foreach (var (kind, heading) in kinds)
                if (lines[i].Text == heading)
                    return (i, kind);
        return (at, null);
    }

    private static string Short(string text) => text.Length <= 60 ? text : text[..57] + "...";

    /// <summary>One place where the caution stands among the lines of a page.</summary>
    /// <param name="Heading">The line that names the kind.</param>
    /// <param name="Length">How many lines it has, the title among them.</param>
    /// <param name="Fault">What is other in its kind or its text, in words; null where nothing is.</param>
    private sealed record Copy(int Heading, int Title, int Length, string? Fault)
    {
        /// <summary>The first of its lines that somebody does not get.</summary>
        public TextLine? HiddenIn(Series<TextLine> lines) =>
            Enumerable.Range(Title, Length).Prepend(Heading).Select(i => lines[i]).FirstOrDefault(l => l.HiddenBy is not null);
    }
}
