namespace Gradus.Tests.Trainings;

/// <summary>What a yes matters for goes by what the work does, never by its stage.</summary>
internal static class ClinicConditions
{
    private const string Move = "2 x move 6 reps, each side";
    private const string Stretch = "2 x hold 20 s, each side";
    private const string Breath = "2 x breathe 6 breaths, each side";
    private const string Press = "2 x press 8 s at 30 %, each side";
    private const string Carry = "2 x carry 10 m at effort 4, each side";

    public static readonly ClinicCase[] All =
    [
        new(
            "A healing scar is moved by the surgeon's leave, in a warm-up too",
            "recent-surgery: yes",
            Move,
            "not cleared recent-surgery"
        )
        {
            Stage = "prepare",
        },
        new("A recent fracture is held by leave only", "recent-injury: yes", Stretch, "not cleared recent-injury")
        {
            Stage = "control",
        },
        new("A fresh hernia repair squeezes no cushion", "recent-surgery: yes", Press, "not cleared recent-surgery")
        {
            Stage = "strengthen",
        },
        new("A broken pelvis is not pressed, however gently", "recent-injury: yes", Press, "not cleared recent-injury")
        {
            Stage = "strengthen",
        },
        new("A broken rib is not opened with the breath", "recent-injury: yes", Breath, "not cleared recent-injury")
        {
            More = "properties: [trunk-end-range]",
        },
        new("After an operation the trunk is not bent to its end", "recent-surgery: yes", Breath, "not cleared recent-surgery")
        {
            More = "properties: [trunk-end-range]",
        },
        new("After an operation somebody breathes", "recent-surgery: yes", Breath, "nothing") { Stage = "prepare" },
        new("A recent injury breathes", "recent-injury: yes", Breath, "nothing") { Stage = "prepare" },
        new("A recent injury does not balance on one leg", "recent-injury: yes", Breath, "not cleared recent-injury")
        {
            Position = "standing",
            More = "properties: [balance]",
        },
        new(
            "A replaced hip does no control drill without the surgeon",
            "joint-replacement: yes",
            Move,
            "not cleared joint-replacement"
        )
        {
            Stage = "control",
            Trains = "hip flexion",
        },
        new("A replaced hip swings in the middle of its range", "joint-replacement: yes", Move, "nothing")
        {
            Stage = "prepare",
            Trains = "hip flexion",
            More = "properties: [mid-range]",
        },
        new(
            "A replaced knee does not sit back on the heels, not even to breathe",
            "joint-replacement: yes",
            Breath,
            "not cleared joint-replacement"
        )
        {
            Position = "kneeling",
            More = "properties: [sits-on-heels]",
        },
        new(
            "Very mobile joints are not moved to their end in a warm-up",
            "very-mobile-joints: yes",
            Move,
            "not cleared very-mobile-joints"
        )
        {
            Stage = "prepare",
        },
        new("Very mobile joints move in the middle of their range", "very-mobile-joints: yes", Move, "nothing")
        {
            Stage = "prepare",
            More = "properties: [mid-range]",
        },
        new(
            "Very mobile joints are stretched by nobody where the exercise says so",
            "very-mobile-joints: yes",
            Stretch,
            "forbidden very-mobile-joints"
        )
        {
            More = "not-with: [very-mobile-joints]",
            Cleared = "very-mobile-joints 2026-11-10 2027-11-09",
        },
        new("Eight weeks after a birth a bridge waits", "pregnancy-or-birth: yes", Move, "not cleared pregnancy-or-birth")
        {
            Stage = "strengthen",
            Position = "supine",
            Trains = "hip extension",
        },
        new(
            "Eight weeks after a birth strengthening by raises waits",
            "pregnancy-or-birth: yes",
            "2 x raise 8 s at effort 5, each side",
            "not cleared pregnancy-or-birth"
        )
        {
            Stage = "strengthen",
        },
        new(
            "Eight weeks after a birth one lies on the back by leave only",
            "pregnancy-or-birth: yes",
            Breath,
            "not cleared pregnancy-or-birth"
        )
        {
            Position = "supine",
        },
        new("Thin bones carry by leave only", "bone-thinning: yes", Carry, "not cleared bone-thinning")
        {
            Position = "standing",
            Stage = "strengthen",
        },
        new("Thin bones do not bend the trunk to its end", "bone-thinning: yes", "2 x hold 20 s", "not cleared bone-thinning")
        {
            Trains = "thoracolumbar flexion",
            Side = "",
        },
        new("Thin bones do not turn the trunk to its end in a warm-up", "bone-thinning: yes", Move, "not cleared bone-thinning")
        {
            Stage = "prepare",
            Trains = "thoracic rotation",
        },
        new("Thin bones turn a little", "bone-thinning: yes", Move, "nothing")
        {
            Stage = "prepare",
            Trains = "thoracic rotation",
            More = "properties: [mid-range]",
        },
        new("Thin bones stretch an ankle", "bone-thinning: yes", Stretch, "nothing") { Trains = "ankle dorsiflexion" },
        new(
            "A nerve in the leg is not stretched",
            "back-pain-with-leg-signs: yes",
            Stretch,
            "not cleared back-pain-with-leg-signs"
        )
        {
            Trains = "hip flexion",
        },
        new(
            "A nerve in the leg is not drawn by the trunk",
            "back-pain-with-leg-signs: yes",
            Breath,
            "not cleared back-pain-with-leg-signs"
        )
        {
            More = "properties: [trunk-end-range]",
        },
        new("A nerve in the leg moves in the middle", "back-pain-with-leg-signs: yes", Move, "nothing")
        {
            Stage = "prepare",
            More = "properties: [mid-range]",
        },
        new("A hernia carries nothing", "hernia: yes", Carry, "not cleared hernia") { Position = "standing" },
        new("Who bleeds easily does not balance", "blood-thinners: yes", Move, "not cleared blood-thinners")
        {
            Position = "standing",
            More = "properties: [balance]",
        },
        new("Who has fits does not hang from a bar", "seizures: yes", Stretch, "not cleared seizures")
        {
            Position = "hanging",
            Trains = "shoulder flexion",
        },
        new("Who has fits does not balance alone", "seizures: yes", Move, "not cleared seizures")
        {
            Position = "standing",
            More = "properties: [balance]",
        },
        new("Numb feet do not land", "numb-feet: yes", Move, "not cleared numb-feet")
        {
            Position = "standing",
            More = "properties: [jumping]",
        },
        new("Who falls stretches sitting", "falls: yes", Stretch, "nothing"),
    ];
}
