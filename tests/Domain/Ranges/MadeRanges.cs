using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Domain;

/// <summary>A practice with made readings: as text for the product, and what its second implementation is told.</summary>
internal sealed record MadeRanges(LittlePractice Practice, SecondClient[] Clients, DateOnly Today)
{
    public const int ClientsInOne = 8;

    public static readonly (string Motion, string Role, string Mode, int Least)[] Demands =
    [
        ("lunge ankle dorsiflexion", "rear leg", "active", 330),
        ("knee to wall", "front leg", "passive", 90),
        ("thoracic rotation", "free arm", "active", 330),
        ("hip internal rotation", "front leg", "active", 340),
        ("shoulder internal rotation", "weapon arm", "", 330),
        ("wrist extension", "weapon arm", "passive", 330),
    ];

    private static readonly DateOnly Start = new(2027, 1, 4);

    private static readonly (string Motion, string Trained, string[] Modes, string[] Tools, int Middle)[] Measures =
    [
        ("lunge ankle dorsiflexion", "ankle dorsiflexion", ["active"], ["inclinometer", "phone"], 320),
        ("knee to wall", "ankle dorsiflexion", ["passive"], ["tape", "tape at home"], 90),
        ("lying ankle dorsiflexion", "ankle dorsiflexion", ["passive"], ["inclinometer"], 120),
        ("thoracic rotation", "thoracic rotation", ["active"], ["inclinometer", "goniometer"], 320),
        ("hip internal rotation", "hip internal rotation", ["active", "passive"], ["inclinometer"], 320),
        ("shoulder internal rotation", "shoulder internal rotation", ["active"], ["inclinometer"], 320),
        ("wrist extension", "wrist extension", ["passive"], ["goniometer"], 320),
    ];

    private static readonly string[] Trained = [.. Measures.Select(m => m.Trained).Distinct()];

    private static readonly string[] Columns =
    [
        "date",
        "motion",
        "side",
        "mode",
        "value",
        "unit",
        "instrument",
        "by",
        "trials",
        "after",
    ];

    /// <summary>What the product says, in lines as the second implementation has them.</summary>
    public string[][] Said()
    {
        var practice = Practice.Read();
        return [.. practice.Clients.Select(c => Lines(ClientRanges.Of(practice, c, Training.Of(practice, c), Today)))];
    }

    public string[][] SaidBy(SecondRanges second) => second.Of(Clients, Demands, Today);

    public static MadeRanges Of(int seed)
    {
        // A fixed seed, so that every run has the same cases.

        var random = new Reading.Chance((ulong)(20270104 + seed));
        var practice = Club.Empty.With("sports/epee.yaml", Sport());
        foreach (var motion in Trained)
            practice = practice.Exercise(IdOf(motion), "2 x hold 30 s, each side", trains: motion);
        var lean = new int?[] { null, 0, 0, 45 }[random.Below(4)];
        var clients = new List<SecondClient>();
        for (var i = 0; i < ClientsInOne; i++)
        {
            var id = $"member-{i}";
            var weeks = Between(random, 2, 21);
            var (isRight, isMobile) = (random.Below(2) == 0, random.Below(8) == 0);
            var work = Work(random, weeks);
            var csv = Csv(random, lean);
            practice = practice
                .Member(
                    id,
                    [string.Join('\n', work.Select(Use))],
                    weeks,
                    isRight ? "right" : "left",
                    answers: isMobile ? "{ calf-strain: no, very-mobile-joints: yes }" : "{ calf-strain: no }"
                )
                .With($"clients/{id}/readings.csv", csv);
            clients.Add(new(csv, Start, weeks, isRight, isMobile, work));
        }

        return new(practice, [.. clients], Start.AddDays(Between(random, 0, 330)));
    }

    private static string[] Lines(ClientRanges ranges) =>
        [
            .. ranges
                .Series.Where(s => s.Latest is not null)
                .Select(s =>
                    $"{KeyOf(s.Key, s.Key.Side)}: {Tenths(s.Baseline?.Value)} {Tenths(s.Latest?.Value)} {Word(s.SinceBaseline)} "
                    + $"{Word(s.SinceBefore)} {(s.Sudden is null ? "" : "sudden")}".TrimEnd()
                )
                .Concat(
                    ranges.Sides.Select(s =>
                        $"sides {KeyOf(s.Key, Side.Left)}: {Tenths(s.Latest.Difference)} {s.Latest.Word} "
                        + (
                            s.Change is not { } change ? "none"
                            : change.IsShown is not { } shown ? "no error"
                            : shown ? "changed"
                            : "not shown"
                        )
                    )
                )
                .Concat(
                    ranges.Demands.Select(d =>
                        $"demand {d.Demand.Motion} {d.Side?.Word()}: {d.Open?.ToString() ?? d.Mark?.Word.ToString()}"
                    )
                )
                .Order(StringComparer.Ordinal),
        ];

    private static string KeyOf(SeriesKey key, Side? side) =>
        $"{key.Motion.Name}|{side?.Word()}|{key.Mode.ToString().ToLowerInvariant()}|{key.Instrument}";

    private static string Word(RangeChange? change) => change?.Word.ToString() ?? "none";

    private static string Tenths(decimal? value) =>
        value is { } one ? ((int)(one * 10)).ToString(CultureInfo.InvariantCulture) : "none";

    private static string Sport()
    {
        var text = new StringBuilder(
            "name: Épée\nstance: Which hand holds your weapon?\nroles: { weapon arm: right, free arm: left, front leg: right, "
                + "rear leg: left }\ndemands:\n"
        );
        foreach (var (motion, role, mode, least) in Demands)
            text.Append(CultureInfo.InvariantCulture, $"  - position: on guard\n    motion: {motion}\n    side: {role}\n")
                .Append(mode.Length == 0 ? "" : $"    mode: {mode}\n")
                .Append(CultureInfo.InvariantCulture, $"    at-least: {least / 10m:0.#}\n    because: It is asked.\n");
        return text.ToString();
    }

    private static (string Motion, string Side, int From, int Until)[] Work(Reading.Chance random, int weeks)
    {
        var work = new List<(string, string, int, int)>();
        foreach (var motion in Trained.Where(_ => random.Below(3) > 0).DefaultIfEmpty(Trained[0]))
        {
            var from = Between(random, 1, weeks + 1);
            var side = new[] { "left", "right", "" }[random.Below(3)];
            work.Add((motion, side, from, Between(random, from, weeks + 1)));
        }

        return [.. work];
    }

    /// <param name="lean">How much the second reading of a pair is above the first, in tenths; null where nobody took pairs to
    /// learn the own error.</param>
    private static string Csv(Reading.Chance random, int? lean)
    {
        var columns = Columns.OrderBy(_ => random.Below(1_000_000)).ToArray();
        var rows = new List<string>();
        foreach (var (motion, _, modes, tools, middle) in Measures)
        {
            var isPaired = lean is not null && motion is "lying ankle dorsiflexion" or "thoracic rotation";
            var days = Days(random, isPaired).ToArray();
            foreach (var side in new[] { "left", "right" })
            {
                if (random.Below(5) == 0)
                    days = [.. Days(random, isPaired)];
                var unit = motion == "knee to wall" ? "cm" : "deg";
                var scale = unit == "cm" ? 0.35 : 1.0;
                var (mode, tool) = (modes[random.Below(modes.Length)], tools[random.Below(4) == 0 ? tools.Length - 1 : 0]);
                var rater = random.Below(3) == 0 ? "" : "oq";
                var (level, tries) = (middle + Between(random, -20, 20), random.Below(2) == 0 ? 3 : 1);
                foreach (var (day, isPair) in days)
                {
                    level += (int)((isPair ? Between(random, -20, 21) + lean ?? 0 : Between(random, -60, 75)) * scale);
                    rows.Add(
                        Row(
                            columns,
                            [
                                Start.AddDays(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                                motion,
                                side,
                                random.Below(12) == 0 ? modes[^1] : mode,
                                (level / 10m)
                                    .ToString("0.0", CultureInfo.InvariantCulture)
                                    .Replace(".0", "", StringComparison.Ordinal),
                                unit,
                                random.Below(10) == 0 ? tools[^1] : tool,
                                random.Below(8) == 0 ? "mt" : rater,
                                random.Below(6) == 0 ? "" : tries.ToString(CultureInfo.InvariantCulture),
                                new[] { "training", "rest", "", "", "", "", "", "" }[random.Below(8)],
                            ]
                        )
                    );
                }
            }
        }

        return string.Join(',', columns) + "\n" + string.Concat(rows.OrderBy(_ => random.Below(1_000_000)).Select(r => r + "\n"));
    }

    /// <summary>Some before the programme, some in it and behind it, some close together and some twice.</summary>
    private static IEnumerable<(int Day, bool IsPair)> Days(Reading.Chance random, bool paired)
    {
        if (paired)
        {
            yield return (-200, false);
            yield return (-200 + random.Below(3) + 1, true);
        }

        var day = Between(random, -120, 10);
        for (var i = Between(random, 1, 7); i > 0; i--)
        {
            yield return (day, false);
            day += new[] { 0, 1, 3, 6, 7, 8, 13, 14, 15, 28, 60, 90 }[random.Below(12)];
        }
    }

    /// <summary>The high end left out.</summary>
    private static int Between(Reading.Chance random, int low, int high) => low + random.Below(high - low);

    private static string Row(string[] columns, string[] values) =>
        string.Join(',', columns.Select(c => values[Array.IndexOf(Columns, c)]));

    private static string Use((string Motion, string Side, int From, int Until) work) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"- use: {IdOf(work.Motion)}\n{(work.Side.Length == 0 ? "" : $"  side: {work.Side}\n")}"
                + $"  from-week: {work.From}\n  until-week: {work.Until}"
        );

    private static string IdOf(string motion) => Kebab.OfWords(motion);
}
