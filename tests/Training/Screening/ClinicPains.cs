namespace Gradus.Tests.Trainings;

/// <summary>Pain now: above 5 nothing, above 2 nothing hard, loaded or jumped on the place.</summary>
internal static class ClinicPains
{
    private const string Stretch = "2 x hold 30 s, each side";
    private const string Hard = "2 x press 8 s at 80%, each side";
    private const string Squat = "2 x move 8 reps at effort 5, each side, load two bottles";

    public static readonly ClinicCase[] All =
    [
        new(
            "A wrist at 6 stops an ankle drill: somebody should look at it",
            "pain-now: 6 right wrist",
            Stretch,
            "too painful 6 right wrist"
        )
        {
            Trains = "ankle dorsiflexion",
        },
        new("A wrist at 5 does not stop an ankle drill", "pain-now: 5 right wrist", Hard, "nothing")
        {
            Trains = "ankle dorsiflexion",
        },
        new("A knee at 4 does no split squat", "pain-now: 4 left knee", Squat, "painful 4 left knee")
        {
            Position = "split-stance",
            Stage = "strengthen",
        },
        new("A knee at 4 does no split squat of the other leg either", "pain-now: 4 left knee", Squat, "painful 4 left knee")
        {
            Position = "split-stance",
            Stage = "strengthen",
            Side = "right",
        },
        new("A knee at 4 is stretched gently, and asked about", "pain-now: 4 left knee", Stretch, "warning pain-where-loaded")
        {
            Position = "supine",
        },
        new("A knee at 2 does the split squat", "pain-now: 2 left knee", Squat, "nothing") { Position = "split-stance" },
        new("A knee at 4 does not mind the other knee's hard work on the back", "pain-now: 4 left knee", Hard, "nothing")
        {
            Position = "supine",
            Side = "right",
        },
        new("A back at 3 does no hard work of a wrist", "pain-now: 3 lower-back", Hard, "painful 3 lower-back")
        {
            Trains = "wrist flexion",
        },
        new("A neck at 3 carries nothing", "pain-now: 3 neck", "2 x carry 10 m at effort 4, each side", "painful 3 neck")
        {
            Position = "standing",
            Trains = "wrist flexion",
        },
        new("A calf at 4 is no ankle's hard work", "pain-now: 4 left calf", Hard, "painful 4 left calf")
        {
            Trains = "ankle plantarflexion",
            Side = "left",
        },
        new("A groin at 4 is no hip's hard work", "pain-now: 4 right groin", Hard, "painful 4 right groin")
        {
            Trains = "hip adduction",
            Side = "right",
        },
        new("A thigh at 3 is no knee's hard work", "pain-now: 3 left thigh", Hard, "painful 3 left thigh"),
        new("A head at 4 is no neck's hard work", "pain-now: 4 head", "2 x press 8 s at 80%", "painful 4 head")
        {
            Trains = "cervical flexion",
            Side = "",
        },
        new("Ribs at 5 are no hard turning of the chest", "pain-now: 5 ribs", Hard, "painful 5 ribs")
        {
            Trains = "thoracic rotation",
        },
        new(
            "A belly at 3 lifts nothing with the back",
            "pain-now: 3 belly",
            "2 x move 8 reps at effort 4, load a bag",
            "painful 3 belly"
        )
        {
            Trains = "thoracolumbar flexion",
            Side = "",
        },
        new("An ankle at 3 does not land", "pain-now: 3 left ankle", "2 x move 6 reps, each side", "painful 3 left ankle")
        {
            Position = "standing",
            Side = "right",
            More = "properties: [jumping]",
        },
        new(
            "A foot at 3 stands under somebody who works hard with a shoulder",
            "pain-now: 3 left foot",
            Hard,
            "painful 3 left foot"
        )
        {
            Position = "standing",
            Trains = "shoulder flexion",
            More = "loads: [shoulder]",
        },
        new("Pain all over at 3 is no day for hard work", "pain-now: 3 whole body", Hard, "painful 3 whole body"),
    ];
}
