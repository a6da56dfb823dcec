using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>A programme, the same with one thing changed, and the lines that say so.</summary>
internal sealed record MadeDifference(string Kind, MadeProgramme Before, MadeProgramme After, Series<string> Lines)
{
    public static readonly Series<string> Kinds =
    [
        "exercise in",
        "exercise out",
        "dose",
        "side",
        "days",
        "sign text",
        "sign added",
        "sign taken",
        "clearance",
        "restriction",
        "weeks",
        "start",
        "pause",
        "words",
        "letter",
        "order",
        "nothing",
    ];

    public static MadeDifference Of(ulong seed)
    {
        var chance = new Chance(seed);
        var made = MadeProgramme.Of(chance);
        var kind = Kinds[(int)(seed % (ulong)Kinds.Count)];
        var at = chance.Below(made.Sessions.Count);
        var session = made.Sessions[at];
        var place = chance.Below(session.Uses.Count);
        var use = session.Uses[place];
        var (name, called) = ($"'Session {at + 1}'", Named(use.Exercise));
        return kind switch
        {
            "exercise in" => In(),
            "exercise out" => With(session with { Uses = session.Uses.Without(place) }, $"exercise out: {called}, of {name}"),
            "dose" => Dose(),
            "side" => Side(),
            "days" => DaysOf(),
            "order" => Order(),
            "sign text" => SignText(),
            "sign added" => SignOf(isAdded: true),
            "sign taken" => SignOf(isAdded: false),
            "words" => After(
                made with
                {
                    Library = made.Library.Put(use.Exercise, made.Library[use.Exercise] with { Text = 1 }),
                },
                $"words: {called} is described otherwise"
            ),
            "letter" => After(made with { Letter = 1 }, "other: the letter"),
            "weeks" => After(made with { Weeks = made.Weeks + 1 }, $"weeks: {made.Weeks}, then {made.Weeks + 1}"),
            "start" => After(
                made with
                {
                    Start = made.Start.AddDays(7),
                },
                $"first day: {made.Start.Iso()}, then {made.Start.AddDays(7).Iso()}"
            ),
            "pause" => After(
                made with
                {
                    Pause = $"pause: {{ from: {made.Start.AddDays(7).Iso()}, until: {made.Start.AddDays(13).Iso()} }}\n",
                },
                $"pauses: none, then {made.Start.AddDays(7).Iso()} to {made.Start.AddDays(13).Iso()}"
            ),
            "clearance" => After(
                made with
                {
                    Clearances = ["{ condition: calf-strain, by: A nurse, on: 2026-11-02, until: 2027-11-01 }"],
                },
                "clearance in: calf-strain: A nurse, 2026-11-02 to 2027-11-01"
            ),
            "restriction" => After(
                made with
                {
                    Restrictions = ["{ by: A nurse, on: 2026-11-02, until: 2027-11-01, joint: right shoulder }"],
                },
                "restriction in: right shoulder: A nurse, 2026-11-02 to 2027-11-01"
            ),
            _ => After(made with { }),
        };

        MadeDifference After(MadeProgramme after, params string[] lines) => new(kind, made, after, lines.ToSeries());

        MadeDifference With(WrittenSession changed, params string[] lines) =>
            After(made with { Sessions = made.Sessions.Put(at, changed) }, lines);

        MadeDifference In()
        {
            var free = Enumerable.Range(0, 10).Except(session.Uses.Select(u => u.Exercise)).ToArray();
            if (free.Length == 0)
                return After(made);
            var added = MadeProgramme.Use(chance, chance.Of(free), made.Weeks);
            var uses = session.Uses.ToList();
            uses.Insert(chance.Below(uses.Count + 1), added);
            return With(session with { Uses = uses.ToSeries() }, $"exercise in: {Named(added.Exercise)}, in {name}");
        }

        MadeDifference Dose()
        {
            var line = chance.Below(use.Lines.Count);
            var (old, dose) = (use.Lines[line], use.Lines[line].Dose.Replace(" s", "", StringComparison.Ordinal) + "0 s");
            var last = line + 1 < use.Lines.Count ? use.Lines[line + 1].Week - 1 : made.Weeks;
            dose = old.Dose == "9 x hold 7 s" ? dose : "9 x hold 7 s";
            return With(
                Put(use with { Lines = use.Lines.Put(line, old with { Dose = dose }) }),
                $"dose of {called} in {name}, {Weeks(old.Week, last)}: {old.Dose}, then {dose}"
            );
        }

        MadeDifference Side()
        {
            var side = MadeProgramme.OtherSide(chance, use.Side);
            return With(
                Put(use with { Side = side }),
                $"side of {called} in {name}, {Weeks(1, made.Weeks)}: {use.Side}, then {side}"
            );
        }

        MadeDifference DaysOf()
        {
            var days = chance.Of([.. MadeProgramme.Days.Where(d => d != session.Days)]);
            return With(session with { Days = days }, $"days of {name}: {Said(session.Days)}, then {Said(days)}");
        }

        MadeDifference Order() =>
            With(
                session with
                {
                    Uses = session.Uses.Skip(1).Append(session.Uses[0]).ToSeries(),
                },
                $"order of {name}: the same exercises in another order"
            );

        MadeDifference SignText()
        {
            var sign = chance.Of(made.Library[use.Exercise].Signs);
            return After(made with { SignTexts = made.SignTexts.Put(sign, 1) }, $"sign: Sign {sign} (s{sign}) has other words");
        }

        MadeDifference SignOf(bool isAdded)
        {
            var had = made.Library[use.Exercise].Signs;
            var may = isAdded ? Enumerable.Range(0, 8).Except(had).ToArray() : [.. had];
            if (may.Length == 0 || (!isAdded && may.Length == 1))
                return After(made);
            var sign = chance.Of(may);
            var signs = isAdded ? had.Append(sign) : had.Where(s => s != sign);
            var done = made.Sessions.SelectMany(s => s.Uses).Select(u => u.Exercise).Where(e => e != use.Exercise);
            var others = done.Any(e => made.Library[e].Signs.Contains(sign));
            var (word, change) = isAdded ? ("in", "now goes for") : ("out", "no longer goes for");
            return After(
                made with
                {
                    Library = made.Library.Put(use.Exercise, new(0, signs.ToSeries())),
                },
                others ? $"sign: Sign {sign} (s{sign}) {change} {called}" : $"sign {word}: Sign {sign} (s{sign})"
            );
        }

        WrittenSession Put(WrittenUse changed) => session with { Uses = session.Uses.Put(place, changed) };
    }

    private static string Named(int exercise) => $"The e{exercise} (e{exercise})";

    private static string Weeks(int from, int to) => from == to ? $"week {from}" : $"weeks {from}-{to}";

    private static string Said(string days) =>
        days.Trim('[', ']') switch
        {
            "3 a week, a day between" => "3 times a week",
            var other => other,
        };
}

internal static class SeriesChanges
{
    public static Series<T> Put<T>(this Series<T> items, int at, T item) => items.Select((i, n) => n == at ? item : i).ToSeries();

    public static Series<T> Without<T>(this Series<T> items, int at) => items.Where((_, n) => n != at).ToSeries();
}
