namespace Gradus.Tests.Trainings;

/// <summary>Loads that nobody wrote down, and sides that lift nothing.</summary>
internal static class ClinicLoads
{
    private const string Move = "2 x move 6 reps, each side";
    private const string Lift = "2 x move 8 reps at effort 5, each side, load a dumbbell";

    public static readonly ClinicCase[] All =
    [
        new(
            "On hands and knees the right wrist bears too while the left is at work",
            "sore-wrist: \"yes, right\"",
            Move,
            "forbidden sore-wrist"
        )
        {
            Position = "hands-and-knees",
            Trains = "wrist extension",
            Side = "left",
            More = "not-with: [sore-wrist]\nloads: [wrist]",
        },
        new("Sitting, the left wrist is at work alone", "sore-wrist: \"yes, right\"", Move, "nothing")
        {
            Trains = "wrist extension",
            Side = "left",
            More = "not-with: [sore-wrist]\nloads: [wrist]",
        },
        new("Standing bears both ankles, whichever is named", "sore-ankle: \"yes, left\"", Move, "forbidden sore-ankle")
        {
            Position = "standing",
            Trains = "ankle dorsiflexion",
            Side = "right",
            More = "not-with: [sore-ankle]\nloads: [ankle]",
        },
        new(
            "Lying down, only the arm that is moved is worked, and the other may rest",
            "sore-shoulder: \"yes, right\"",
            Move,
            "nothing"
        )
        {
            Position = "supine",
            Trains = "shoulder flexion",
            Side = "left",
            More = "not-with: [sore-shoulder]\nloads: [elbow]",
        },
        new("A split stance bends the ankle of the rear foot", "sore-ankle: \"yes, left\"", Move, "loaded sore-ankle")
        {
            Position = "split-stance",
            Side = "right",
            More = "loads: [knee]",
        },
        new("And that of the front foot", "sore-ankle: \"yes, right\"", Move, "loaded sore-ankle")
        {
            Position = "split-stance",
            Side = "right",
            More = "loads: [knee]",
        },
        new("A dumbbell loads the wrist", "sore-wrist: \"yes, left\"", Lift, "loaded sore-wrist") { Trains = "shoulder flexion" },
        new(
            "A rucksack does not",
            "sore-wrist: \"yes, left\"",
            "2 x move 8 reps at effort 5, each side, load a rucksack",
            "nothing"
        )
        {
            More = "properties: [worn-load]",
        },
        new(
            "What is carried hangs on the hand, whatever is worn",
            "sore-wrist: \"yes, left\"",
            "2 x carry 10 m at effort 4, each side",
            "loaded sore-wrist"
        )
        {
            Position = "standing",
            More = "properties: [worn-load]",
        },
        new("A bottle in one hand may be in the other", "sore-wrist: \"yes, left\"", Lift, "loaded sore-wrist")
        {
            Trains = "elbow flexion",
            Side = "right",
        },
        new(
            "Sitting on the heels bends a sore knee fully",
            "sore-knee: \"yes, left\"",
            "2 x hold 20 s, each side",
            "loaded sore-knee"
        )
        {
            Position = "floor-sitting",
            Trains = "shoulder flexion",
            More = "properties: [sits-on-heels]",
        },
        new("Kneeling lies on the top of the foot", "sore-foot: \"yes, right\"", Move, "loaded sore-foot")
        {
            Position = "half-kneeling",
            Trains = "hip extension",
            Side = "left",
            More = "loads: [hip]",
        },
        new("Weight on the hands in any position loads a wrist", "sore-wrist: \"yes, right\"", Move, "loaded sore-wrist")
        {
            Position = "prone",
            Trains = "hip extension",
            More = "properties: [weight-on-hands]",
        },
        new(
            "Hanging pulls on both shoulders",
            "sore-shoulder: \"yes, right\"",
            "2 x hold 20 s, each side",
            "loaded sore-shoulder"
        )
        {
            Position = "hanging",
            Trains = "wrist flexion",
            Side = "left",
        },
        new(
            "On hands and knees the shoulders bear as the wrists do",
            "sore-shoulder: \"yes, right\"",
            Move,
            "loaded sore-shoulder"
        )
        {
            Position = "hands-and-knees",
            Trains = "hip extension",
        },
        new("A sore calf stands", "sore-calf: \"yes, left\"", Move, "loaded sore-calf")
        {
            Position = "standing",
            Trains = "shoulder flexion",
        },
        new("A squat is done by both hips", "sore-hip: \"yes, left\"", Move, "loaded sore-hip")
        {
            Position = "squat",
            Side = "right",
        },
        new("A sore knee does not mind a wrist", "sore-knee: \"yes, left\"", Move, "nothing") { Trains = "wrist flexion" },
    ];
}
