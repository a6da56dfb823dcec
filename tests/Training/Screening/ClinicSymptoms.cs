namespace Gradus.Tests.Trainings;

/// <summary>Symptoms, disease and activity: who waits for a clinician before any training, and who before hard work.</summary>
internal static class ClinicSymptoms
{
    private const string Breath = "2 x breathe 6 breaths, each side";
    private const string Gentle = "2 x press 8 s at 50%, each side";
    private const string Hard = "2 x press 8 s at 80%, each side";

    public static readonly ClinicCase[] All =
    [
        new("The least pain in the chest stops even breathing", "pain-now: 1 chest", Breath, "not cleared signs-or-symptoms"),
        new("Pain in the chest that a doctor has seen since is trained with gently", "pain-now: 1 chest", Gentle, "nothing")
        {
            Cleared = "signs-or-symptoms 2026-11-10 2027-11-09",
        },
        new(
            "A letter from before the chest hurt says nothing about it",
            "pain-now: 1 chest",
            Gentle,
            "not cleared signs-or-symptoms"
        )
        {
            Cleared = "signs-or-symptoms 2026-10-01 2027-09-30",
        },
        new("A chest that still hurts at 4 is not worked hard, cleared or not", "pain-now: 4 chest", Hard, "painful 4 chest")
        {
            Cleared = "signs-or-symptoms 2026-11-10 2027-11-09",
        },
        new("Symptoms stop everything", "signs-or-symptoms: yes", Breath, "not cleared signs-or-symptoms"),
        new(
            "Symptoms cleared a day before they were named are not cleared",
            "signs-or-symptoms: yes",
            Gentle,
            "not cleared signs-or-symptoms"
        )
        {
            Cleared = "signs-or-symptoms 2026-11-01 2027-10-31",
        },
        new("Symptoms cleared on the day they were named are", "signs-or-symptoms: yes", Gentle, "nothing")
        {
            Cleared = "signs-or-symptoms 2026-11-02 2027-11-01",
        },
        new(
            "Breathless lying down may be a failing heart",
            "breathless-at-night: yes",
            Breath,
            "not cleared breathless-at-night"
        ),
        new("Who gets dizzy may fall", "dizzy-spells: yes", Breath, "not cleared dizzy-spells"),
        new(
            "A swollen calf is looked at before a wrist is stretched",
            "calf-pain-or-swelling: yes",
            "2 x hold 20 s, each side",
            "not cleared calf-pain-or-swelling"
        )
        {
            Trains = "wrist flexion",
        },
        new("A clot of the last months may loosen with anything", "blood-clot: yes", Breath, "not cleared blood-clot"),
        new(
            "A hot joint stops work elsewhere too",
            "hot-swollen-joint: yes",
            "2 x hold 20 s, each side",
            "not cleared hot-swollen-joint"
        ),
        new("Nobody trains with a fever", "fever: yes", Breath, "not cleared fever"),
        new(
            "A joint that became hot after the letter was written is not cleared by it",
            "hot-swollen-joint: yes",
            Gentle,
            "not cleared hot-swollen-joint"
        )
        {
            Cleared = "hot-swollen-joint 2026-09-01 2027-08-31",
        },
        new("Heart disease in somebody active: gentle work needs nobody's leave", "heart-disease: yes", Gentle, "nothing"),
        new("Heart disease in somebody active: hard work does", "heart-disease: yes", Hard, "not cleared heart-disease"),
        new("The kidney counts as the heart does", "kidney-disease: yes", Hard, "not cleared kidney-disease"),
        new(
            "Diabetes in somebody who is not active: any work waits",
            "metabolic-disease: yes, regularly-active: no",
            Gentle,
            "not cleared metabolic-disease"
        ),
        new(
            "One clinician's leave for the heart says nothing about the kidney",
            "heart-disease: yes, kidney-disease: yes",
            Hard,
            "not cleared kidney-disease"
        )
        {
            Cleared = "heart-disease 2026-11-10 2027-11-09",
        },
        new(
            "A leave of 13 months ago is too old for hard work, for the inactive as for the active",
            "heart-disease: yes, regularly-active: no",
            Hard,
            "short heart-disease"
        )
        {
            Cleared = "heart-disease 2025-12-07 2028-01-01",
            FromWeek = 5,
        },
        new(
            "The same leave in week 1: too old, and too early",
            "heart-disease: yes, regularly-active: no",
            Hard,
            "short heart-disease + too early"
        )
        {
            Cleared = "heart-disease 2025-12-01 2028-01-01",
        },
        new("The same leave is enough for gentle work", "heart-disease: yes, regularly-active: no", Gentle, "nothing")
        {
            Cleared = "heart-disease 2025-12-01 2028-01-01",
        },
        new("80 % in week 2 is too early for somebody not active", "regularly-active: no", Hard, "too early") { FromWeek = 2 },
        new("80 % in week 4 still is", "regularly-active: no", Hard, "too early") { FromWeek = 4 },
        new("80 % in week 5 is not", "regularly-active: no", Hard, "nothing") { FromWeek = 5 },
        new("Somebody not active begins with 50 %", "regularly-active: no", Gentle, "nothing"),
        new("A carry whose effort nobody states may be hard", "regularly-active: no", "2 x carry 10 m, each side", "too early")
        {
            Position = "standing",
        },
        new("What was not asked is not no", "recent-injury: not asked", Breath, "not asked recent-injury"),
    ];
}
