namespace Gradus.Tests.Trainings;

/// <param name="Why">What a clinician would say to it: the name of the case.</param>
/// <param name="Log">As <see cref="ToldLog"/> reads it, one entry behind the other.</param>
/// <param name="Comes">Each row that applies, worst first: the row, the place and what follows; "nothing".</param>
internal sealed record PainCase(string Why, string[] Log, string Comes)
{
    public static PainCase Of(string why, string comes, params string[] log) => new(why, log, comes);
}

/// <summary>The table of pain with ease-off 2 and stop 5: single entries, by the row that they belong to.</summary>
internal static class PainCases
{
    public static readonly PainCase[] All =
    [
        // P0: it cannot wait.
        PainCase.Of("Chest pain stops everything", "now chest", "+0; alarm chest; stopped; during 1 chest"),
        PainCase.Of("A 1 in the chest is enough", "now chest", "+0; before 1 chest"),
        PainCase.Of("A chest that hurts on the morning after too", "now chest", "+0; morning 2 chest"),
        PainCase.Of("The chest alone, with no number, is not blank", "now chest", "+0; drill dull chest"),
        PainCase.Of("No pain in the chest is none", "nothing", "+0; before 0 chest; during 0; morning 0"),
        PainCase.Of("Fainting has no place", "now not said", "+0; alarm faint"),
        PainCase.Of("Short of breath before it was begun counts too", "now not said", "+0; not today ill; alarm breath"),
        PainCase.Of("Weakness of one side", "now not said", "+0; alarm weakness"),
        PainCase.Of("Speech", "now not said", "+0; alarm speech"),
        PainCase.Of("Sight", "now not said", "+0; alarm sight"),
        PainCase.Of("The worst headache", "now not said", "+0; alarm headache"),
        PainCase.Of("Saddle or bladder", "now not said", "+0; alarm saddle; morning 0"),
        PainCase.Of("Ribs are not the chest", "nothing", "+0; during 2 ribs; morning 0"),
        PainCase.Of(
            "A sign does not hide the knee",
            "now not said + stopped left knee",
            "+0; alarm faint; during 6 left knee; morning 0"
        ),
        // P1: the same day.
        PainCase.Of("A snap in the calf", "same-day left calf", "+0; drill snap left calf"),
        PainCase.Of("A hot swollen knee", "same-day right knee", "+0; stopped swollen; during 3 right knee"),
        PainCase.Of("A foot that does not bear weight", "same-day left foot", "+0; drill no-weight left foot"),
        PainCase.Of("A numb hand", "same-day right hand", "+0; drill numb right hand"),
        PainCase.Of("Numb, and nobody knows where", "same-day not said", "+0; stopped numb"),
        PainCase.Of(
            "A snap with pain of 7 is both, the worse first",
            "same-day left calf + stopped left calf",
            "+0; drill snap 7 left calf"
        ),
        // P2: stopped.
        PainCase.Of("6 during is above the stop", "stopped left knee", "+0; during 6 left knee; morning 0"),
        PainCase.Of("5 during is not", "nothing", "+0; before 5 left knee; during 5 left knee; morning 5 left knee"),
        PainCase.Of("Sharp pain at any level", "stopped left knee", "+0; drill sharp 2 left knee; morning 0"),
        PainCase.Of("Sharp, with no number", "stopped left knee", "+0; drill sharp left knee"),
        PainCase.Of("Giving way without pain", "stopped right ankle", "+0; drill giving-way right ankle; during 0"),
        PainCase.Of("The session stopped for sharp pain", "stopped lower-back", "+0; stopped sharp; during 4 lower-back"),
        PainCase.Of("Stopped for a dull ache is no row", "nothing", "+0; drill dull 2 left knee; morning 0"),
        PainCase.Of("Stopped for time", "nothing", "+0; stopped time; during 1 left knee; morning 0"),
        PainCase.Of("Stopped for tiredness", "nothing", "+0; stopped tired"),
        // Above the stop otherwise.
        PainCase.Of("7 before and after is no quiet day", "above-stop neck", "+0; before 7 neck; during 5 neck; morning 7 neck"),
        PainCase.Of("6 before it was begun", "above-stop left hip", "+0; not today pain; before 6 left hip"),
        // P3: the morning after.
        PainCase.Of(
            "3 on the morning after 0",
            "next-morning left knee",
            "+0; before 0; during 2 left knee; morning 3 left knee"
        ),
        PainCase.Of("2 on the morning after 0 is two points more", "next-morning left knee", "+0; before 0; morning 2 left knee"),
        PainCase.Of("2 on the morning after 1 is within the ease", "nothing", "+0; before 1 left knee; morning 2 left knee"),
        PainCase.Of("3 after 3 is as it was", "nothing", "+0; before 3 left knee; during 4 left knee; morning 3 left knee"),
        PainCase.Of("4 after 3 is above both", "next-morning left knee", "+0; before 3 left knee; morning 4 left knee"),
        PainCase.Of("3 with a blank before is above the ease", "next-morning left knee", "+0; morning 3 left knee"),
        PainCase.Of("2 with a blank before is not: blank is not 0", "nothing", "+0; morning 2 left knee"),
        PainCase.Of("The client says it was worse", "next-morning left knee", "+0; during 1 left knee; morning 1; worse"),
        PainCase.Of("Worse, and nobody knows where", "next-morning not said", "+0; worse"),
        PainCase.Of("Not worse is no row", "nothing", "+0; during 2 left knee; morning 1; better"),
        PainCase.Of(
            "Another place before says nothing of this one",
            "next-morning right elbow",
            "+0; before 4 left knee; morning 3 right elbow"
        ),
        PainCase.Of("A number without a place is of the only one", "next-morning left knee", "+0; during 2 left knee; morning 3"),
        PainCase.Of(
            "A knee whose side was not said may be that knee",
            "nothing",
            "+0; before 3 knee; during 4 left knee; morning 3 left knee"
        ),
        PainCase.Of("A blank morning is not said, and no row", "nothing", "+0; before 0; during 2 left knee"),
        PainCase.Of(
            "Stopped, and worse on the morning after: both",
            "stopped left knee + next-morning left knee",
            "+0; before 1 left knee; during 6 left knee; morning 5 left knee"
        ),
    ];

    /// <summary>What follows from several.</summary>
    public static readonly PainCase[] Again =
    [
        PainCase.Of(
            "Twice at one place within 14 days is a clinician's",
            "stopped left knee clinician + stopped left knee",
            "+0; drill sharp left knee",
            "+14; drill sharp left knee"
        ),
        PainCase.Of(
            "15 days later it is the first again",
            "stopped left knee + stopped left knee",
            "+0; drill sharp left knee",
            "+15; drill sharp left knee"
        ),
        PainCase.Of(
            "Two knees are two places",
            "stopped right knee + stopped left knee",
            "+0; drill sharp left knee",
            "+3; drill sharp right knee"
        ),
        PainCase.Of(
            "A knee without a side may be the same",
            "stopped knee clinician + stopped left knee",
            "+0; drill sharp left knee",
            "+3; drill sharp knee"
        ),
        PainCase.Of(
            "Worse twice is out for a week",
            "next-morning left knee out + next-morning left knee",
            "+0; morning 3 left knee",
            "+3; morning 3 left knee"
        ),
        PainCase.Of(
            "Worse again after the week out is a clinician's",
            "next-morning left knee clinician + next-morning left knee out + next-morning left knee",
            "+0; morning 3 left knee",
            "+3; morning 3 left knee",
            "+24; morning 3 left knee"
        ),
        PainCase.Of(
            "Later than 14 days after the week out begins anew",
            "next-morning left knee + next-morning left knee out + next-morning left knee",
            "+0; morning 3 left knee",
            "+3; morning 3 left knee",
            "+25; morning 3 left knee"
        ),
        PainCase.Of(
            "The same session told twice is told once",
            "stopped left knee",
            "+0; start 18:00; drill sharp left knee",
            "+0; start 18:00; drill sharp left knee; morning 0"
        ),
        PainCase.Of(
            "An alarm is not taken back by silence",
            "now not said",
            "+0; start 18:00; alarm faint",
            "+0; start 18:00; morning 0"
        ),
        // P4: mornings of this week beside those of two weeks before.
        PainCase.Of(
            "A median of 2 above that of two weeks before",
            "rising left knee",
            "+0; before 2 left knee; morning 0",
            "+2; before 2 left knee; morning 0",
            "+14; before 2 left knee; morning 2 left knee",
            "+16; before 2 left knee; morning 2 left knee"
        ),
        PainCase.Of(
            "One point is never called worse",
            "nothing",
            "+0; before 2 left knee; morning 1 left knee",
            "+2; before 2 left knee; morning 1 left knee",
            "+14; before 2 left knee; morning 2 left knee",
            "+16; before 2 left knee; morning 2 left knee"
        ),
        PainCase.Of(
            "One value is no median",
            "nothing",
            "+0; before 2 left knee; morning 0",
            "+14; before 2 left knee; morning 2 left knee",
            "+16; before 2 left knee; morning 2 left knee"
        ),
        PainCase.Of(
            "The week between does not count",
            "nothing",
            "+7; before 2 left knee; morning 0",
            "+9; before 2 left knee; morning 0",
            "+14; before 2 left knee; morning 2 left knee",
            "+16; before 2 left knee; morning 2 left knee"
        ),
        // Above the ease-off again and again, with nothing else to tell.
        PainCase.Of(
            "A back at 5 again is the coach's",
            "above-ease lower-back",
            "+0; during 3 lower-back",
            "+3; during 5 lower-back",
            "+7; during 5 lower-back"
        ),
        PainCase.Of("Once above it the page answers by itself", "nothing", "+0; during 5 lower-back", "+3; during 1 lower-back"),
        PainCase.Of("At the ease-off is not above it", "nothing", "+0; during 2 lower-back", "+3; during 2 lower-back"),
        PainCase.Of("Two places once each", "nothing", "+0; during 4 lower-back", "+3; during 4 left knee"),
        PainCase.Of(
            "The first of the two is fourteen days old",
            "nothing",
            "+0; during 4 lower-back",
            "+14; during 4 lower-back"
        ),
        PainCase.Of("Thirteen days old counts", "above-ease lower-back", "+0; during 4 lower-back", "+13; during 4 lower-back"),
        PainCase.Of("What was stopped is told as that", "stopped left knee", "+0; during 6 left knee", "+3; during 4 left knee"),
        // P5: pain that lasts.
        PainCase.Of("Four of six in 14 days", "lasting left knee", [.. Six("1 left knee", 4)]),
        PainCase.Of("Three of six is not two thirds", "nothing", [.. Six("1 left knee", 3)]),
        PainCase.Of("Five entries are too few", "nothing", [.. Six("1 left knee", 5).Take(5)]),
        PainCase.Of("At 4 all the time it lasts too", "above-ease left knee + lasting left knee", [.. Six("4 left knee", 6)]),
        PainCase.Of(
            "Six weeks of it are a clinician's",
            "lasting left knee clinician",
            [.. Enumerable.Range(0, 21).Select(i => $"+{2 * i}; before 1 left knee; during 1 left knee; morning 1 left knee")]
        ),
    ];

    private static IEnumerable<string> Six(string pain, int with) =>
        Enumerable
            .Range(0, 6)
            .Select(i => i < with ? $"+{2 * i}; before {pain}; during {pain}; morning {pain}" : $"+{2 * i}; before 0; morning 0");
}
