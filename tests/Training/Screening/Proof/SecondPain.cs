using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>One pain of an answer to "Pain now", a second time.</summary>
/// <param name="Side">left or right; null for both, or for a region that has none.</param>
internal sealed record SecondPain(string Text, int Level, string? Side, string Place)
{
    public static IEnumerable<SecondPain> Of(MadeClient client) =>
        from pain in client.Answers.GetValueOrDefault("pain-now", "0").Trim('[', ']').Split(", ")
        let words = pain.Split(' ')
        where words.Length > 1
        let side = words.Skip(1).FirstOrDefault(w => w is "left" or "right")
        select new SecondPain(
            pain,
            int.Parse(words[0], CultureInfo.InvariantCulture),
            side,
            string.Join(' ', words.Skip(side is null ? 1 : 2))
        );

    /// <summary>"Above stop-above (5) anywhere blocks the client, whatever the exercise loads; above ease-off-above (2) it
    /// forbids hard effort, load and jumping on the place (and for the spine anywhere)." So does the chest: whoever works hard
    /// works it.</summary>
    public static IEnumerable<string> Kinds(MadeClient client, MadeDone done, ProofSlip slip)
    {
        var loaded = new SecondLoads(done, slip);
        var hard =
            done.Exercise.Properties.Contains("jumping")
            || SecondWork.IsLoaded(done.Exercise)
            || done.Weeks.Any(w => SecondWork.IsHard(done.Exercise, w.Line, slip));
        foreach (var pain in Of(client))
        {
            if (pain.Level > (slip == ProofSlip.PainOfSixIsFine ? 6 : 5))
            {
                if (slip != ProofSlip.PainElsewhereIsFine || pain.IsLoaded(loaded, slip))
                    yield return $"painful {pain.Text} too much";
            }
            else if (pain.Level > 2 && hard && pain.IsLoaded(loaded, slip) && slip != ProofSlip.PainOfThreeIsFine)
                yield return $"painful {pain.Text}";
        }
    }

    private bool IsLoaded(SecondLoads loaded, ProofSlip slip) =>
        Place is "whole body" or "chest"
        || (Place is "neck" or "upper-back" or "lower-back" && slip != ProofSlip.SpineOnlyWhereLoaded)
        || loaded.Stands(Place)
        || (
            Side is null || slip == ProofSlip.SideOfThePainForgotten
                ? loaded.On(Place).Length > 0
                : loaded.On(Place).Contains(Side)
        );
}
