namespace Gradus.Tests.Domain;

/// <summary>The same club under a coach who writes German. Ida and Odile read English; only Odile raises her heels, which has a
/// sign of its own and asks for balance.</summary>
internal static class GermanClub
{
    /// <summary>Of every caution and exercise the German text, with a word or two that stand in no English one.</summary>
    public static readonly LittlePractice Untranslated = new[] { "calf-pull", "sharp-stab", "slow-breath" }
        .Aggregate(Club.Empty, (practice, caution) => practice.Without($"cautions/{caution}.md"))
        .Edit("practice.md", "language: en", "language: de")
        .With("cautions/stechen.md", "---\ntitle: Stechender Schmerz\nkind: stop\n---\nBrich die Übung ab.\n")
        .With("cautions/wadenzug.md", "---\ntitle: Ein Zug in der Wade\nkind: expect\n---\nDas ist die Dehnung.\n")
        .With("cautions/krampf.md", "---\ntitle: Ein Krampf im Fuß\nkind: ease-off\n---\nLass los, bis er weg ist.\n")
        .With(
            "cautions/festhalten.md",
            "---\ntitle: Etwas zum Festhalten\nkind: take-care\nattaches-to: { property: balance }\n---\nStell dich "
                + "neben die Wand.\n"
        )
        .With(
            "exercises/wadendehnung.md",
            """
            ---
            title: Wadendehnung
            trains: ankle dorsiflexion
            stage: gain
            position: standing
            dose: 2 x hold 30-60 s, rest 20 s, each side
            signs: [stechen, wadenzug]
            not-with: [calf-strain, recent-surgery, recent-injury, very-mobile-joints, raised-blood-pressure, eye-pressure-or-retina, hernia, pregnancy-or-birth, seizures, falls, numb-feet, joint-replacement, blood-thinners, bone-thinning]
            harder: fersenheben
            ---
            Die hintere Ferse bleibt im Ausfall unten.

            ## Set up
            Stell dich vor eine Wand.

            ## Do
            1. Bleib so, {hold} lang. Danach kommt das [Fersenheben](fersenheben.md).
            """
        )
        .With(
            "exercises/fersenheben.md",
            """
            ---
            title: Fersenheben
            trains: ankle dorsiflexion
            stage: prepare
            position: standing
            dose: 2 x hold 10-20 s, rest 20 s, each side
            signs: [stechen, krampf, wadenzug]
            not-with: [calf-strain, recent-surgery, recent-injury, very-mobile-joints, raised-blood-pressure, eye-pressure-or-retina, hernia, pregnancy-or-birth, seizures, falls, numb-feet, joint-replacement, blood-thinners, bone-thinning]
            properties: [balance]
            ---
            ## Do
            1. Heb die Ferse und bleib oben, {hold} lang.
            """
        )
        .Member("ida", ["- use: wadendehnung"], weeks: 2)
        .Member("odile", ["- use: wadendehnung\n- use: fersenheben"], weeks: 2);

    public static readonly LittlePractice Translated = Untranslated
        .With("cautions/stechen.en.md", "---\ntitle: A stabbing pain\n---\nEnd the exercise.\n")
        .With("cautions/wadenzug.en.md", "---\ntitle: A pull in the calf\n---\nThat is the stretch.\n")
        .With("cautions/krampf.en.md", "---\ntitle: A cramp in the foot\n---\nLet go until it has gone.\n")
        .With("cautions/festhalten.en.md", "---\ntitle: Something to hold on to\n---\nStand beside the wall.\n")
        .With(
            "exercises/wadendehnung.en.md",
            """
            ---
            title: Calf stretch
            ---
            The rear heel stays down in the lunge.

            ## Set up
            Stand before a wall.

            ## Do
            1. Stay there for {hold}. The [heel raise](fersenheben.md) comes next.

            ## Later
            Rest {rest}.
            """
        )
        .With("exercises/fersenheben.en.md", "---\ntitle: Heel raise\n---\n## Do\n1. Raise the heel and stay up for {hold}.\n");

    public static readonly string[] German =
    [
        "Stechend",
        "Brich",
        "Zug in",
        "Dehnung",
        "Krampf",
        "Lass los",
        "Festhalten",
        "Stell dich",
        "Wadendehnung",
        "hintere Ferse",
        "Bleib so",
        "Danach",
        "Heb die",
    ];
}
