namespace Gradus.Tests.Domain;

/// <summary>The club of Sluice Lane with its usual settings, to be filled with the exercises that a test needs.</summary>
internal static class Club
{
    /// <summary>No exercise and nobody yet; times are those of dose-line.md.</summary>
    public static readonly LittlePractice Empty = LittlePractice
        .Golden.Files.Select(f => f.Key)
        .Where(path =>
            path.StartsWith("exercises/", StringComparison.Ordinal) || path.StartsWith("clients/", StringComparison.Ordinal)
        )
        .Aggregate(LittlePractice.Golden, (p, path) => p.Without(path))
        .Without("cautions/dull-ache.md")
        .With(
            "practice.md",
            """
            ---
            name: Sluice Lane épée club
            coach: Hesper Quill
            contact: { email: hesper@example.org, phone: "+44 1632 960077" }
            language: en
            emergency: { GB: { call: "999" } }
            ---
            Exercise advice.
            """
        );

    public static LittlePractice Settings(this LittlePractice practice, string settings) =>
        practice.Edit("practice.md", "emergency:", $"settings: {settings}\nemergency:");

    /// <param name="more">Further lines of the header.</param>
    public static LittlePractice Exercise(
        this LittlePractice practice,
        string id,
        string dose,
        string more = "",
        string position = "standing",
        string trains = "ankle dorsiflexion",
        string signs = "sharp-stab, calf-pull",
        string body = "## Do\nGo."
    ) =>
        practice.With(
            $"exercises/{id}.md",
            $"""
            ---
            title: The {id.Replace('-', ' ')}
            trains: {trains}
            stage: gain
            position: {position}
            dose: {dose}
            signs: [{signs}]
            {(more.Contains("not-with:", StringComparison.Ordinal) ? "" : "not-with: [calf-strain]")}
            {more}
            ---
            {body}
            """
        );

    /// <param name="sessions">The text of the list <c>do</c>, one session after the other, each item as the coach writes it
    /// behind its hyphen.</param>
    public static LittlePractice Member(
        this LittlePractice practice,
        string id,
        string[] sessions,
        int weeks = 1,
        string stance = "right",
        string lighter = "[]",
        string answers = "{ calf-strain: no }",
        string clearances = "[]",
        string letter = "Train well."
    ) =>
        practice
            .With(
                $"clients/{id}/client.yaml",
                $"""
                name: {char.ToUpperInvariant(id[0]) + id[1..]} Wherry
                sport: epee
                stance: {stance}
                born: 1990
                country: GB
                language: en
                zone: Europe/London
                days: [Mon]
                minutes: 60
                agreed: {"{ training: 2026-11-02 }"}
                answered: 2026-11-02
                answers: {answers}
                clearances: {clearances}
                """
            )
            .With(
                $"clients/{id}/answers.yaml",
                FloorAnswers.Text(new(2026, 11, 2), asked => answers.Contains(asked + ":", StringComparison.Ordinal))
            )
            .With(
                $"clients/{id}/programme.md",
                $"""
                ---
                title: Footwork
                start: 2027-01-04
                weeks: {weeks}
                lighter: {lighter}
                sessions:
                {string.Concat(
                    sessions.Select(
                        (uses, i) =>
                            $"  - name: Session {i + 1}\n    days: [Mon]\n    do:\n{uses.Split('\n').Select(line => $"      {line}\n").Aggregate("", string.Concat)}"
                    )
                )}
                ---
                {letter}
                """
            );
}
