namespace Gradus.Tests.Trainings;

/// <summary>Hard and long work: pressure, breath, sugar, and the limits of a clearance.</summary>
internal static class ClinicEffort
{
    private const string Hard = "2 x press 8 s at 80%, each side";
    private const string Gentle = "2 x press 8 s at 50%, each side";

    public static readonly ClinicCase[] All =
    [
        new("Insulin and hard work: sugar falls, also later", "insulin: yes", Hard, "not cleared insulin"),
        new("Insulin and gentle work", "insulin: yes", Gentle, "nothing"),
        new("Asthma and a set to near its end", "asthma: yes", "2 x move 8 reps, each side, leave 3", "not cleared asthma"),
        new("Asthma and a set with much left", "asthma: yes", "2 x move 8 reps, each side, leave 5", "nothing"),
        new(
            "Asthma and lifting of unstated effort",
            "asthma: yes",
            "2 x move 8 reps, each side, load a bag",
            "not cleared asthma"
        ),
        new(
            "Pressure and a long press, however light",
            "raised-blood-pressure: yes",
            "2 x press 20 s at 30%, each side",
            "not cleared raised-blood-pressure"
        ),
        new("Pressure and a short light press", "raised-blood-pressure: yes", Gentle, "nothing"),
        new(
            "Pressure and 7 of 10",
            "raised-blood-pressure: yes",
            "2 x raise 8 s at effort 7, each side",
            "not cleared raised-blood-pressure"
        ),
        new(
            "Pressure and four presses without letting go are one long one",
            "raised-blood-pressure: yes",
            "2 x 4 x press 8 s at 40%, each side",
            "not cleared raised-blood-pressure"
        ),
        new(
            "Pressure in the eye and a long carry",
            "eye-pressure-or-retina: yes",
            "2 x carry 30 m at effort 4, each side",
            "not cleared eye-pressure-or-retina"
        )
        {
            Position = "standing",
        },
        new(
            "Pressure in the eye and ten metres",
            "eye-pressure-or-retina: yes",
            "2 x carry 10 m at effort 4, each side",
            "nothing"
        )
        {
            Position = "standing",
        },
        new(
            "Pressure in the eye and the head low",
            "eye-pressure-or-retina: yes",
            "2 x hold 20 s, each side",
            "not cleared eye-pressure-or-retina"
        )
        {
            More = "properties: [head-low]",
        },
        new(
            "Thirty metres are longer than twenty seconds",
            "hernia: yes",
            "2 x carry 30 m at effort 4, each side",
            "beyond hold at most 20 s"
        )
        {
            Position = "standing",
            Cleared = "hernia 2026-11-10 2027-11-09 hold at most 20 s",
        },
        new("Twenty metres are not", "hernia: yes", "2 x carry 20 m at effort 4, each side", "nothing")
        {
            Position = "standing",
            Cleared = "hernia 2026-11-10 2027-11-09 hold at most 20 s",
        },
        new(
            "A carry of unstated effort may be above 60 %",
            "hernia: yes",
            "2 x carry 10 m, each side",
            "beyond effort at most 60 %"
        )
        {
            Position = "standing",
            Cleared = "hernia 2026-11-10 2027-11-09 effort at most 60 %",
        },
        new(
            "A loaded hold of unstated effort may be above 60 % too",
            "hernia: yes",
            "2 x hold 20 s, each side, load a bag",
            "beyond effort at most 60 %"
        )
        {
            Cleared = "hernia 2026-11-10 2027-11-09 effort at most 60 %",
        },
        new(
            "No bending to the end means no stretch of the trunk",
            "bone-thinning: yes",
            "2 x hold 20 s",
            "beyond no end-range trunk bending"
        )
        {
            Trains = "thoracolumbar flexion",
            Side = "",
            Cleared = "bone-thinning 2026-11-10 2027-11-09 no end-range trunk bending",
        },
        new("A leave that ends in the week does not cover it", "insulin: yes", Hard, "short insulin")
        {
            Cleared = "insulin 2026-11-10 2027-01-09",
        },
    ];
}
