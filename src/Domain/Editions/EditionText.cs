using System.Globalization;
using System.Text;

namespace Gradus.Domain;

/// <summary>Edition → the text of its file. What is printed reads back to the same edition.</summary>
public static class EditionText
{
    /// <summary>Of what an edition asks and says, and of nothing else: 64 hexadecimal digits.</summary>
    public static string HashOf(EditionContent content) => TextHash.Whole(Body(content));

    public static string Print(Edition edition) =>
        Invariant(
            $"""
            # What was published, for comparing. Gradus writes this; leave it as it is.
            edition: {edition.Number}
            date: {edition.Date.Iso()}
            training: {edition.TrainingHash}
            plan: {edition.PlanHash}

            """
        ) + Body(edition.Content);

    /// <summary>Everything behind the hashes.</summary>
    public static string Body(EditionContent content)
    {
        var text = new StringBuilder();
        Line($"programme: {content.Programme}");
        Line($"title: {Quoted(content.Title)}");
        Line($"start: {content.Start.Iso()}");
        Line($"weeks: {content.Weeks}");
        List("pauses", content.Pauses, p => Line($"  - {{ from: {p.From.Iso()}, until: {p.Until.Iso()} }}"));
        List("sessions", content.Sessions, Session);
        List("exercises", content.Exercises, e => Line($"  - {{ id: {e.Id}, title: {Quoted(e.Title)}, words: {e.Words} }}"));
        List("cautions", content.Cautions, Caution);
        List("clearances", content.Clearances, c => Line($"  - {Quoted(c)}"));
        List("restrictions", content.Restrictions, r => Line($"  - {Quoted(r)}"));
        List("others", content.Others, o => Line($"  - {{ part: {o.Name}, words: {o.Words} }}"));
        return text.ToString();

        void Session(EditionSession session)
        {
            Line($"  - name: {Quoted(session.Name)}");
            Line($"    days: {Quoted(session.Days)}");
            if (session.InsteadOf.Length > 0)
                Line($"    instead-of: {Quoted(session.InsteadOf)}");
            Line($"    times: [{string.Join(", ", session.Times)}]");
            if (session.Uses.Count > 0)
                Line($"    uses:");
            foreach (var use in session.Uses)
                Use(use);
        }

        void Use(EditionUse use)
        {
            Line($"      - exercise: {use.Exercise}");
            if (use.Rounds.Length > 0)
                Line($"        rounds: {Quoted(use.Rounds)}");
            if (use.IsKept)
                Line($"        kept: yes");
            if (use.MoveOn.Length > 0)
                Line($"        move-on: {use.MoveOn}");
            Line($"        asks:");
            foreach (var asked in use.Asks)
            {
                var side = asked.Side.Length > 0 ? $"side: {Quoted(asked.Side)}, " : "";
                Line($"          - {{ weeks: {Weeks(asked)}, {side}dose: {Quoted(asked.Dose)} }}");
            }
        }

        void Caution(EditionCaution caution)
        {
            Line($"  - id: {caution.Id}");
            Line($"    kind: {Kebab.Of(caution.Kind.ToString())}");
            Line($"    title: {Quoted(caution.Title)}");
            Line($"    words: {caution.Words}");
            Line($"    exercises: [{string.Join(", ", caution.Exercises)}]");
        }

        void List<T>(string key, Series<T> items, Action<T> write)
        {
            if (items.Count == 0)
                return;
            Line($"{key}:");
            foreach (var item in items)
                write(item);
        }

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    /// <summary>"3", "3-5"</summary>
    private static string Weeks(EditionDose asked) =>
        Invariant(asked.From == asked.To ? $"{asked.From}" : (FormattableString)$"{asked.From}-{asked.To}");

    /// <summary>In double quotation marks, as YAML 1.2 has it.</summary>
    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static string Invariant(FormattableString text) =>
        text.ToString(CultureInfo.InvariantCulture).ReplaceLineEndings("\n");
}
