namespace Gradus.Tests.Reading;

/// <summary>Makes the terms of a line, each as its tokens.</summary>
internal sealed class TermMaker(Dice dice, HashSet<string> kinds)
{
    public IEnumerable<string[]> Make(bool severalSets, bool hasTimes, bool hasReps)
    {
        var side = dice.Pick("", "each side", "per side", "alternate sides", "both sides", "on", "each side");
        if (side.Length > 0)
            kinds.Add(side);
        if (side == "on")
            yield return ["on", Side()];
        else if (side.Length > 0)
            yield return side.Split(' ');
        var isEach = side is "each side" or "per side";
        var plus = isEach && dice.OneIn(3);
        if (plus)
            yield return Kept("plus", "plus", $"{dice.Between(1, 3)}", "x", "on", Side());
        if ((severalSets || plus) && dice.OneIn(2))
            yield return Kept("rest", ["rest", .. Time(0)]);
        if (hasTimes && dice.OneIn(2))
            yield return Kept("pause", ["pause", .. Time(0)]);
        if ((isEach || side == "alternate sides") && dice.OneIn(3))
            yield return Kept("switch", ["switch", .. Time(0)]);
        if (hasReps && dice.OneIn(2))
            yield return Kept("tempo", ["tempo", Beat(), "-", Beat(), "-", Beat(), "-", $"{dice.Between(1, 4)}"]);
        if (hasReps && dice.OneIn(3))
            yield return Kept("leave", "leave", $"{dice.Between(0, 5)}");
        if (dice.OneIn(6))
            yield return Kept(
                "load",
                "load",
                dice.Pick("8 kg", "a rucksack of 10 kg", "Kettlebell 12–16 kg", "2 × 5 kg", "die grüne Hantel")
            );
    }

    private string[] Kept(string kind, params string[] term)
    {
        kinds.Add(kind);
        return term;
    }

    private string Beat()
    {
        if (!dice.OneIn(4))
            return $"{dice.Between(0, 5)}";
        kinds.Add("fast beat");
        return "x";
    }

    private string Side() => dice.Pick("left", "right", "front leg", "rear leg", "weapon arm", "Épée arm");

    private string[] Time(int low) =>
        dice.Pick<string[]>(
            [$"{dice.Between(low, 90)}", "s"],
            [$"{dice.Between(low, 3)}", "min"],
            [$"{dice.Between(low, 3)}", "min", $"{dice.Between(1, 59)}", "s"]
        );
}
