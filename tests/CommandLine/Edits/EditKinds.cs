using Gradus.Domain;
using Gradus.Tests.Media;

namespace Gradus.Tests.CommandLine;

/// <summary>A way of changing something between two publishes.</summary>
/// <param name="Apply">Whether there was anything to change.</param>
internal sealed record EditKind(string Name, Func<EditedPractice, KeptTarget, Chance, bool> Apply);

internal static class EditKinds
{
    private static readonly string[] Names = ["Ada Wren", "Cole Amory", "Dora Finch"];

    public static readonly EditKind Mending = new("a mistake mended", Mended);

    public static readonly Series<EditKind> All =
    [
        Said("a dose of an exercise", "exercises/wall-calf-stretch.md", "rest 20 s", "rest 25 s", "rest 15 s"),
        Said("a dose of a programme", "clients/tess/programme.md", "2 x hold 45 s", "2 x hold 40 s", "3 x hold 45 s"),
        Said("a caution's text", "cautions/pinch.md", "until it is gone.", "until it has gone.", "and wait."),
        Said("a caution's title", "cautions/sharp-pain.md", "title: Sharp pain", "title: A sharp pain", "title: Sudden pain"),
        Said("a caution's kind", "cautions/calf-pull.md", "kind: expect", "kind: ease-off"),
        Said("an exercise's text", "exercises/calf-press.md", "Let go slowly.", "Let go gently.", "Let go at once, slowly."),
        Said("an exercise's title", "exercises/calf-press.md", "title: Calf press", "title: Press of the calf"),
        Said("a client's answer", "clients/bram/answers.yaml", "fever: no", "fever: yes", "fever: not asked"),
        Said("a client's side", "clients/ida/client.yaml", "stance: left", "stance: right"),
        Said("a letter", "clients/joss/programme.md", "after practice.", "before practice.", "at home."),
        Said("a setting", "practice.md", "large-step: 500 %", "large-step: 400 %", "breath: 8 s"),
        Said("whom to call", "practice.md", "call: \"999\"", "call: \"112\""),
        Said("a day of training", "clients/bram/programme.md", "days: [Sat]", "days: 1 a week"),
        Said("a reading", "clients/tess/readings.csv", "passive,9,deg", "passive,11,deg", "passive,12,deg"),
        Said("a clearance", "clients/tess/client.yaml", "until: 2027-11-15", "until: 2026-12-10", "until: 2027-06-30"),
        Said("a dose of a shared programme", EditedPractice.Shared, "2 x hold 45 s", "2 x hold 40 s", "3 x hold 45 s"),
        Said("a shared letter", EditedPractice.Shared, "holds your lunge back", "slows your lunge", "shortens your lunge"),
        Said("a client's difference", "clients/ida/programme.md", "press 12 s at 50%", "press 10 s at 60%"),
        Said("since when it holds", "clients/ida/programme.md", "from-week: 2", "from-week: 1"),
        Said("what a condition holds for", "conditions.yaml", "stages: [load]", "stages: [control]", "positions: [prone]"),
        Said("what a condition forbids", "conditions.yaml", "stages: [load]", "stages: [strengthen]"),
        File("a group", "groups/evening.yaml", "name: All\nprogramme: lunge\nclients: [ida, joss]\nday: Mon\n"),
        File("a link", "clients/bram/link.yaml", EditedPractice.LinkOf("bram")),
        File("a link that another client has", "clients/joss/link.yaml", EditedPractice.LinkOf("bram")),
        new("links for everybody, and hosted by them", Hosted),
        File("an acceptance", "accepted.yaml", Acceptance),
        File("a translation", "cautions/pinch.de.md", "---\ntitle: Ein Kneifen\n---\nGeh zurück.\n"),
        File("a word of the site", "words/en.yaml", "your-weeks: All your weeks\n"),
        File("a word explained", "glossary.yaml", "lunge: A long step forward.\n"),
        File("a log", "clients/bram/log.csv", "date,session,week,minutes\n2026-12-12,1,1,10\n"),
        File("an exercise that nobody does", "exercises/calf-rock.md", Rock),
        Said(
            "what it is not done with",
            "exercises/calf-rock.md",
            "not-with: [hernia]",
            "not-with: [fever]",
            "not-with: [seizures]"
        ),
        Said("an answer that forbids", "clients/bram/answers.yaml", "recent-injury: no", "recent-injury: yes"),
        Said("an answer that nothing names", "clients/bram/answers.yaml", "seizures: no", "seizures: yes"),
        File("readings of somebody else", "clients/joss/readings.csv", Pairs),
        File("a translation of an exercise", "exercises/calf-press.de.md", "---\ntitle: Wade\n---\n## Do\n1. Drück.\n"),
        new("a picture's bytes", Picture),
        new("a client added", Added),
        new("a client removed", Removed),
        new("a style of the theme", (p, _, c) => p.Exchange(p.Theme, "look.css", c.Of, "2px solid", "3px solid", "4px solid")),
        new("a template of the theme", (p, _, c) => p.Exchange(p.Theme, "terms.html", c.Of, "<dl>", "<dl class=\"mine\">")),
        new("some days later", (p, _, c) => Later(p, 1 + c.Below(9))),
        new("some months later", (p, _, c) => Later(p, 30 * (1 + c.Below(3)))),
        new("the first day again", (p, _, _) => Later(p, EditedPractice.FirstDay.DayNumber - p.Today.DayNumber)),
        new("a file altered in the target", (_, t, c) => InTarget(t, c, f => System.IO.File.AppendAllText(f, " "))),
        new("a file cut in the target", (_, t, c) =>
            InTarget(t, c, f => System.IO.File.WriteAllBytes(f, [.. System.IO.File.ReadAllBytes(f).SkipLast(9)]))
        ),
        new("a file deleted in the target", (_, t, c) => InTarget(t, c, System.IO.File.Delete)),
        new("a file added in the target", (_, t, c) => InTarget(t, c, f => System.IO.File.WriteAllText(f + ".old.html", "x"))),
        new("the record damaged", (_, t, c) => InRecord(t, c, f => System.IO.File.WriteAllText(f, "{"))),
        new("the record cut", (_, t, c) =>
            InRecord(t, c, f =>
                System.IO.File.WriteAllBytes(f, System.IO.File.ReadAllBytes(f)[..(int)(new FileInfo(f).Length / 2)])
            )
        ),
        new("the record deleted", (_, t, c) => InRecord(t, c, System.IO.File.Delete)),
        new("a mistake", Mistake),
        Mending,
        new("everything as it was", (p, _, c) => p.GoBack(1 + c.Below(6))),
        new("another form", (p, _, c) => Other(p, c)),
        new("one client alone", (p, _, c) => (p.Client = c.Of(p.Clients)).Length > 0),
        new("nothing at all", (_, _, _) => true),
    ];

    private const string Acceptance =
        "- rule: equipment-missing\n  file: clients/tess/programme.md\n  saw: nothing\n  because: So it is.\n"
        + "  by: Ottoline Marsh\n"
        + "  until: 2027-01-31\n";

    /// <summary>In place of the stretch it may be named to who must not do that.</summary>
    private const string Rock =
        "---\ntitle: Calf rock\ntrains: ankle dorsiflexion\nstage: gain\nposition: split-stance\nequipment: [wall]\n"
        + "loads: [ankle]\ndose: 2-3 x hold 30-60 s, rest 20 s, each side\nsigns: [sharp-pain, pinch, calf-pull]\n"
        + "not-with: [hernia]\n---\nThe rear ankle bends and comes back.\n\n## Set up\nLean on a wall.\n\n"
        + "## Do\n1. Sink forward.\n2. Stay there for {hold}.\n";

    /// <summary>Twelve pairs on days that follow each other: by these the practice knows its own error of measuring.</summary>
    private static string Pairs =>
        "date,motion,side,mode,value,unit,instrument\n"
        + string.Concat(
            Enumerable
                .Range(0, 24)
                .Select(i =>
                    $"2026-{1 + (i / 4):00}-{1 + (i % 4 / 2 * 14) + (i % 2):00},lying ankle dorsiflexion,left,passive,"
                    + $"{9 + (i % 2 * (i % 3))},deg,inclinometer\n"
                )
        );

    private static EditKind Said(string name, string path, params string[] said) =>
        new(name, (practice, _, chance) => practice.Exchange(practice.Sources, path, chance.Of, said));

    /// <summary>A file that comes and goes.</summary>
    private static EditKind File(string name, string path, string text) => new(name, (practice, _, _) =>
        {
            if (path.StartsWith("clients/", StringComparison.Ordinal) && !practice.Clients.Contains(path.Split('/')[1]))
                return false;
            if (!practice.Sources.Remove(path))
                practice.Put(path, text);
            return true;
        });

    private static bool Picture(EditedPractice practice, KeptTarget target, Chance chance)
    {
        practice.Sources["exercises/wall.png"] = MadePicture.Quarters(8 + chance.Below(4), 8, "png");
        return true;
    }

    private static bool Added(EditedPractice practice, KeptTarget target, Chance chance)
    {
        var at = chance.Below(Names.Length);
        var id = Names[at].Split(' ')[0].ToLowerInvariant();
        if (practice.Clients.Count > 5 || practice.Clients.Contains(id))
            return false;
        practice.Add(id, Names[at], chance.Of(practice.Clients));
        return true;
    }

    private static bool Removed(EditedPractice practice, KeptTarget target, Chance chance)
    {
        if (practice.Clients.Count < 5)
            return false;
        practice.Remove(
            chance.Of(practice.Clients.Where(c => Names.Any(n => n.StartsWith(c, StringComparison.OrdinalIgnoreCase))).ToArray())
        );
        return true;
    }

    private static bool Later(EditedPractice practice, int days)
    {
        practice.Today = practice.Today.AddDays(days);
        return days != 0;
    }

    private static bool Other(EditedPractice practice, Chance chance)
    {
        practice.Form = chance.Of(new[] { "folder", "zip", "file" }.Where(f => f != practice.Form).ToArray());
        return true;
    }

    /// <summary>Each by a link that is there already: one that is made when it is needed is another in every run.</summary>
    private static bool Hosted(EditedPractice practice, KeptTarget target, Chance chance)
    {
        foreach (var client in practice.Clients)
            practice.Put($"clients/{client}/link.yaml", EditedPractice.LinkOf(client));
        practice.Form = EditedPractice.ByLink;
        return true;
    }

    private static bool Mistake(EditedPractice practice, KeptTarget target, Chance chance)
    {
        var path = chance.Of(
            practice.Sources.Keys.Where(p => practice.Text(p).StartsWith("---\ntitle:", StringComparison.Ordinal)).ToArray()
        );
        if (practice.Text(path).Contains("mistake: ", StringComparison.Ordinal))
            return false;
        practice.Put(path, practice.Text(path).Replace("---\ntitle:", "---\nmistake: x\ntitle:", StringComparison.Ordinal));
        return true;
    }

    public static bool HasMistake(EditedPractice practice) => Wrong(practice).Length > 0;

    /// <summary>What stands in the way of somebody's site, and what was there before.</summary>
    private static readonly (string Wrong, string Right)[] Mistakes =
    [
        ("mistake: x\n", ""),
        ("fever: yes", "fever: no"),
        ("recent-injury: yes", "recent-injury: no"),
        ("seizures: yes", "seizures: no"),
        ("stages: [strengthen]", "stages: [load]"),
    ];

    private static bool Mended(EditedPractice practice, KeptTarget target, Chance chance)
    {
        var wrong = Wrong(practice);
        foreach (var path in wrong)
            practice.Put(
                path,
                Mistakes.Aggregate(practice.Text(path), (text, m) => text.Replace(m.Wrong, m.Right, StringComparison.Ordinal))
            );
        return wrong.Length > 0;
    }

    private static string[] Wrong(EditedPractice practice) =>
        [
            .. practice.Sources.Keys.Where(p =>
                (
                    p.EndsWith(".md", StringComparison.Ordinal)
                    || p.EndsWith("answers.yaml", StringComparison.Ordinal)
                    || p == "conditions.yaml"
                ) && Mistakes.Any(m => practice.Text(p).Contains(m.Wrong, StringComparison.Ordinal))
            ),
        ];

    /// <summary>Any file of a site but its front page: without that it is nobody's site, and is not touched.</summary>
    private static bool InTarget(KeptTarget target, Chance chance, Action<string> change)
    {
        var files = KeptTarget.In(target.Folder).Keys.Where(p => !p.EndsWith("/index.html", StringComparison.Ordinal)).ToArray();
        if (files.Length == 0)
            return false;
        change(Path.Combine(target.Folder, chance.Of(files)));
        target.Altered();
        return true;
    }

    private static bool InRecord(KeptTarget target, Chance chance, Action<string> change)
    {
        var files = target.Records().ToArray();
        if (files.Length == 0)
            return false;
        change(chance.Of(files));
        return true;
    }
}
