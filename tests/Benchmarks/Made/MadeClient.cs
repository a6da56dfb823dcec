using System.Text;

namespace Gradus.Tests.Benchmarks;

/// <summary>One client: two or three sessions of four to six uses over six weeks, drawn from eight to ten exercises of the
/// client's own.</summary>
internal static class MadeClient
{
    private const ulong Start = 0x6772616475730000;

    private static readonly string[] FirstNames =
    [
        "Ada",
        "Bertil",
        "Cosima",
        "Dunstan",
        "Edda",
        "Fergus",
        "Greta",
        "Hale",
        "Ines",
        "Jory",
        "Kerensa",
        "Lorcan",
        "Maren",
        "Nuno",
        "Orla",
        "Piers",
        "Quilla",
        "Rufus",
        "Sunniva",
        "Tobin",
        "Una",
        "Verity",
        "Wilf",
        "Xanthe",
        "Yorick",
        "Zelda",
    ];

    private static readonly string[] Beginnings =
    [
        "Alder",
        "Birk",
        "Crane",
        "Dun",
        "Elph",
        "Fair",
        "Gold",
        "Hather",
        "Ivel",
        "Jess",
        "Kest",
        "Lang",
        "Mill",
        "North",
        "Oaken",
        "Penn",
        "Quarr",
        "Raven",
        "Stan",
        "Thorn",
    ];

    private static readonly string[] Endings =
    [
        "bourne",
        "by",
        "combe",
        "den",
        "ford",
        "grave",
        "holt",
        "ick",
        "ley",
        "mere",
        "ness",
        "stow",
        "ton",
        "well",
        "worth",
    ];

    private static readonly string[][] Weekdays =
    [
        ["Mon", "Thu"],
        ["Tue"],
        ["Sat"],
    ];

    private static readonly string[] SessionNames = ["Ankles and hips", "Back and shoulders", "Weapon arm"];

    private static readonly string[] Remarks =
    [
        "When we measured you, the rear ankle bent less than the front one.",
        "The short steps before a long lunge have grown quieter since the summer.",
        "In the last bout your shoulder rose with every parry to the outside.",
        "The rear hip turns out less than the front one, so the knee drops inwards.",
        "You told me that the first minutes on the piste feel stiff.",
        "Your recovery from the lunge is slower on the third day of a week.",
    ];

    /// <summary>Unlike any other's; beyond 7,800 clients of two surnames.</summary>
    public static string NameOf(int number)
    {
        var (first, rest) = (number % FirstNames.Length, number / FirstNames.Length);
        var (one, other) = (rest % Surnames, rest / Surnames);
        return $"{FirstNames[first]} {Surname(one)}{(other > 0 ? "-" + Surname(other) : "")}";
    }

    private static readonly int Surnames = Beginnings.Length * Endings.Length;

    private static string Surname(int number) => Beginnings[number % Beginnings.Length] + Endings[number / Beginnings.Length];

    public static string IdOf(int number) => NameOf(number).ToLowerInvariant().Replace(' ', '-');

    public static IEnumerable<(string Path, string Text)> Files(int number)
    {
        var draws = new Draws(Start + (ulong)number);
        var folder = $"clients/{IdOf(number)}";
        yield return ($"{folder}/client.yaml", Card(number, draws));
        yield return ($"{folder}/programme.md", Programme(number, draws));
        yield return ($"{folder}/readings.csv", Readings(draws));
        yield return ($"{folder}/notes.md", "Ask about the new shoes before the next measuring.\n");
    }

    private static string Card(int number, Draws draws)
    {
        var text = new StringBuilder(
            $"name: {NameOf(number)}\nsport: epee\nstance: {draws.One(["left", "right"])}\nborn: {draws.From(1965, 2000)}\n"
        );
        text.Append("country: GB\nlanguage: en\nzone: Europe/London\ndays: [Mon, Tue, Thu, Sat]\nhour: \"18:30\"\nminutes: 90\n");
        text.Append(
            "equipment: [mat, wall, cushion, water bottle]\nagreed: { training: 2026-11-20 }\nanswered: 2026-11-20\nanswers:\n"
        );
        var cleared = draws.Below(10) == 0;
        foreach (var condition in MadeConditions.Ids)
            text.Append($"  {condition}: {(cleared && condition == MadeConditions.ClearedFirst ? "yes" : "no")}\n");
        text.Append("  regularly-active: yes\n  pain-now: 0\n");
        if (cleared)
            text.Append(
                $"clearances:\n  - condition: {MadeConditions.ClearedFirst}\n    by: a general practice\n    on: "
                    + "2026-11-10\n    until: 2031-11-10\n"
            );
        return text.ToString();
    }

    private static string Programme(int number, Draws draws)
    {
        var own = draws.Some(MadeExercises.All, draws.From(8, 10));
        var text = new StringBuilder(
            $"---\ntitle: {draws.One(["A longer", "A quieter", "A quicker"])}, steadier lunge\nstart: 2026-12-07\nweeks: "
                + "6\nlighter: [4]\nsessions:\n"
        );
        foreach (var session in Enumerable.Range(0, draws.From(2, 3)))
        {
            text.Append($"  - name: {SessionNames[session]}\n    days: [{string.Join(", ", Weekdays[session])}]\n    do:\n");
            foreach (var exercise in draws.Some(own, draws.From(4, 6)))
                text.Append(Use(exercise, draws));
        }

        var first = NameOf(number).Split(' ')[0];
        return text.Append(
                $"---\n{first},\n\n{string.Join(' ', draws.Some(Remarks, 3))}\n\nSo the sessions of these six weeks are "
                    + "for that:\n\n- begin each with an easy minute;\n"
            )
            .Append(
                "- leave week 4 *as light as it is*;\n- stop at the signs, and write to me.\n\nWe meet again on a "
                    + $"Wednesday {draws.From(2, 6)} weeks from now and measure the same things in the same way.\n\nOttoline\n"
            )
            .ToString();
    }

    private static string Use(MadeExercise exercise, Draws draws)
    {
        var side = exercise.Limb switch
        {
            "leg" => draws.One(["", "", "rear leg", "front leg"]),
            "arm" => draws.One(["", "weapon arm", "free arm"]),
            _ => "",
        };
        return draws.Below(3) switch
        {
            0 => $"      - use: {exercise.Id}\n{Side()}",
            1 => $"      - use: {exercise.Id}\n{Side()}        by-week:\n          1: {exercise.ByWeek[0]}\n          3: "
                + $"{exercise.ByWeek[1]}\n",
            _ => $"      - use: {exercise.Id}\n{Side()}        from-week: 2\n        move-on: [pain at most 2, every "
                + "repetition held]\n",
        };

        string Side() => side.Length == 0 ? "" : $"        side: {side}\n";
    }

    private static string Readings(Draws draws)
    {
        var text = new StringBuilder("date,motion,side,mode,value,unit,instrument\n");
        foreach (var motion in new[] { "lying ankle dorsiflexion", "hip external rotation", "shoulder external rotation" })
        foreach (var side in new[] { "left", "right" })
            text.Append($"2026-11-20,{motion},{side},passive,{draws.From(12, 48)},deg,inclinometer\n");
        return text.ToString();
    }
}
