using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>One line of a made log.</summary>
/// <param name="Start">When it began, so that two of a day are two.</param>
/// <param name="Alarm">As the log writes it; empty for none.</param>
/// <param name="Stopped">Why the session was stopped; empty where it was not.</param>
/// <param name="Worse">yes, no or empty.</param>
internal sealed record MadeEntry(
    DateOnly Day,
    string Start,
    string Alarm,
    string Stopped,
    string Before,
    string During,
    string Morning,
    string Worse
)
{
    private static readonly string[] Places =
    [
        "left knee",
        "right knee",
        "left ankle",
        "right wrist",
        "left shoulder",
        "lower-back",
    ];

    private static readonly string[] Alarms = ["chest", "faint", "breath", "weakness", "speech", "sight", "headache", "saddle"];

    private static readonly string[] Grave = ["numb", "snap", "swollen", "no-weight"];

    public static string Head =>
        "date,start,session,week,edition,alarm,stopped,stopped-for,pain-before,pain-during,pain-morning," + "worse-next-morning";

    public string Line =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Day:yyyy-MM-dd},{Start},1,1,3f0c2a1b,{Alarm},{(Stopped == "" ? "" : "yes")},{Stopped},"
        ) + $"{Before},{During},{Morning},{Worse}";

    /// <summary>One to three entries round the day of the answers.</summary>
    public static MadeEntry[] LogOf(Reading.Chance chance, DateOnly answered)
    {
        var place = chance.Of(Places);
        var day = answered.AddDays(chance.Below(30) - 24);
        var entries = new List<MadeEntry>();
        for (var times = 1 + chance.Below(3); times > 0; times--)
        {
            entries.Add(
                entries.Count > 0 && chance.Below(2) == 0
                    ? entries[0] with
                    {
                        Day = day,
                    }
                    : Of(chance, day, chance.Below(4) == 0 ? chance.Of(Places) : place)
            );
            day = day.AddDays(chance.Of([0, 1, 3, 7, 10, 14, 15, 22]));
        }

        return [.. entries.Select((e, i) => e with { Start = $"{10 + i}:00" })];
    }

    private static MadeEntry Of(Reading.Chance chance, DateOnly day, string place)
    {
        var quiet = new MadeEntry(day, "", "", "", "0", $"1 {place}", "0", "no");
        return chance.Below(16) switch
        {
            0 => quiet with { Alarm = chance.Of(Alarms) },
            1 => quiet with { During = "1 chest" },
            2 or 3 => quiet with { Stopped = chance.Of(Grave), During = $"3 {place}" },
            4 or 5 => quiet with { Stopped = "sharp", During = $"2 {place}" },
            6 => quiet with { Stopped = "giving-way", During = $"1 {place}" },
            7 => quiet with { During = $"{5 + chance.Below(3)} {place}" },
            8 => quiet with { Before = $"6 {place}", During = $"5 {place}", Morning = $"6 {place}" },
            9 or 10 => quiet with { Morning = $"{2 + chance.Below(2)} {place}" },
            11 => quiet with { Before = $"2 {place}", Morning = $"{2 + chance.Below(3)} {place}" },
            12 => quiet with { Worse = "yes" },
            13 => quiet with { Stopped = chance.Of(["tired", "time", "dull"]) },
            _ => quiet,
        };
    }
}
