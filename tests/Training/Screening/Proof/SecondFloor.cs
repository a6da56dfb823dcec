namespace Gradus.Tests.Trainings;

/// <summary>What everybody is asked, a second time: which of it matters with an exercise.</summary>
internal static class SecondFloor
{
    /// <summary>The conditions that must be thought of with what an exercise does, as the floor lists them.</summary>
    public static IEnumerable<string> Matters(MadeExercise exercise)
    {
        if (exercise.Properties.Contains("trunk-end-range"))
            yield return "bone-thinning";
        if (exercise.Properties.Contains("balance"))
            foreach (var c in new[] { "seizures", "falls", "numb-feet" })
                yield return c;
        if (exercise.Properties.Contains("jumping"))
            foreach (
                var c in new[]
                {
                    "bone-thinning",
                    "joint-replacement",
                    "recent-surgery",
                    "recent-injury",
                    "pregnancy-or-birth",
                    "blood-thinners",
                    "falls",
                    "numb-feet",
                }
            )
                yield return c;
        if (exercise.Position is "prone" or "supine")
            yield return "pregnancy-or-birth";

        // Hard by its dose: 70 % or more, 7 of 10, a set that leaves 3 or fewer, or work that does not say how hard it is;
        // jumping is hard too.
        var line = exercise.Dose.Lines[exercise.IsFixed ? 0 : ^1];
        string[] still = ["raised-blood-pressure", "eye-pressure-or-retina", "hernia"];
        if (line.Effort is null or >= 70 || exercise.Properties.Contains("jumping"))
            foreach (var c in still.Concat(["recent-surgery", "recent-injury", "pregnancy-or-birth"]))
                yield return c;

        // A press, pull or raise of more than 10 s.
        var isLong =
            line.Text.Split(' ') is var words
            && words
                .Zip(words.Skip(1))
                .Any(w =>
                    w.First is "press" or "pull" or "raise"
                    && int.Parse(w.Second.Split('-')[^1], System.Globalization.CultureInfo.InvariantCulture) > 10
                );
        if (isLong)
            foreach (var c in still)
                yield return c;
    }
}
