namespace Gradus.Tests.Reading;

/// <summary>Makes one line, token by token.</summary>
internal sealed class LineMaker(Dice dice)
{
    private readonly List<string> tokens = [];
    private readonly HashSet<string> kinds = new(StringComparer.Ordinal);
    private bool hasReps;
    private bool hasTimes;

    public GeneratedLine Make()
    {
        var several = Sets();
        if (dice.OneIn(3))
            Brackets();
        else
            Bare(several is not null);
        var terms = new TermMaker(dice, kinds).Make(several == true, hasTimes, hasReps).ToArray();
        foreach (var term in terms.OrderBy(_ => dice.Between(0, 99)))
        {
            tokens.Add(",");
            tokens.AddRange(term);
        }

        return new(new LineWriter(dice, kinds).Write(tokens), kinds);
    }

    /// <summary>Whether there are several sets; null where none are written.</summary>
    private bool? Sets()
    {
        if (dice.OneIn(4))
        {
            kinds.Add("no sets");
            return null;
        }

        var first = tokens.Count;
        var high = Count(5, "sets");
        if (tokens.Count - first > 1)
            kinds.Add("range of sets");
        tokens.Add("x");
        return high > 1;
    }

    private void Bare(bool isCounted)
    {
        kinds.Add("bare");
        if (isCounted && dice.OneIn(2))
            Times();
        Action();
    }

    private void Brackets()
    {
        kinds.Add("brackets");
        tokens.Add("(");
        var parts = dice.Between(1, 3);
        for (var i = 0; i < parts; i++)
        {
            if (i > 0)
                tokens.Add("then");
            if (dice.OneIn(3))
                Group();
            else
            {
                if (parts == 1)
                    kinds.Add("one action in brackets");
                if (dice.OneIn(2))
                    Times();
                Action();
            }
        }

        tokens.Add(")");
    }

    private void Group()
    {
        Count(3, "group");
        tokens.AddRange(["x", "("]);
        var actions = dice.Between(1, 3);
        for (var i = 0; i < actions; i++)
        {
            if (i > 0)
                tokens.Add("then");
            if (dice.OneIn(2))
                Times();
            Action();
        }

        tokens.Add(")");
    }

    private void Times()
    {
        hasTimes |= Count(4, "repetitions") > 1;
        tokens.Add("x");
    }

    /// <summary>The high end of what was written.</summary>
    private int Count(int most, string kind)
    {
        kinds.Add(kind);
        var low = dice.Between(1, most);
        var high = dice.OneIn(3) ? dice.Between(low, most) : low;
        tokens.Add($"{low}");
        if (high > low || dice.OneIn(20))
        {
            kinds.Add("range");
            tokens.AddRange(["-", $"{high}"]);
        }

        return high;
    }

    private void Action()
    {
        var verb = dice.Pick("hold", "breathe", "press", "pull", "raise", "move", "carry");
        tokens.Add(verb);
        kinds.Add(verb);
        var isContraction = verb is "press" or "pull" or "raise";
        if (isContraction && dice.OneIn(3))
            Ramp();
        else
        {
            Amount(verb);
            if (isContraction && dice.OneIn(2))
                Steady();
            else if (verb is not ("hold" or "breathe") && dice.OneIn(4))
                Felt();
        }
    }

    private void Amount(string verb)
    {
        if (verb == "carry")
            Counted(60, "metres", "m");
        else if (verb == "move" && dice.OneIn(2))
            Counted(15, "reps", "reps");
        else if (verb is "hold" or "breathe" && dice.OneIn(2))
            Counted(12, "breaths", "breaths");
        else if (dice.OneIn(4))
            Counted(5, "minutes", "min");
        else if (dice.OneIn(3))
        {
            kinds.Add("minutes and seconds");
            tokens.AddRange([$"{dice.Between(0, 3)}", "min", $"{dice.Between(1, 59)}", "s"]);
        }
        else if (dice.OneIn(3))
        {
            kinds.Add("time to time");
            tokens.AddRange([
                $"{dice.Between(1, 60)}",
                "s",
                "-",
                .. dice.Pick<string[]>(["1", "min"], ["2", "min", "30", "s"], ["80", "s"]),
            ]);
        }
        else
            Counted(90, "seconds", "s");
        hasReps |= tokens[^1] == "reps";
    }

    private void Counted(int most, string kind, string unit)
    {
        Count(most, kind);
        tokens.Add(unit);
    }

    private void Steady()
    {
        tokens.Add("at");
        Count(100, "steady");
        tokens.Add("%");
    }

    private void Felt()
    {
        kinds.Add("felt");
        var low = dice.Between(0, 10);
        tokens.AddRange(["at", "effort", $"{low}"]);
        if (dice.OneIn(3))
            tokens.AddRange(["-", $"{dice.Between(low, 10)}"]);
    }

    private void Ramp()
    {
        var steps = dice.Between(2, 20);
        var low = dice.Between(1, 3);
        tokens.Add($"{steps * low}");
        if (dice.OneIn(2))
            tokens.AddRange(["-", $"{steps * dice.Between(low, 5)}"]);
        tokens.AddRange(["s", "at"]);
        Count(100, "ramp");
        if (dice.OneIn(2))
            tokens.Add("%");
        tokens.Add("to");
        Count(100, "ramp");
        tokens.AddRange(["%", "in", $"{steps}", "steps"]);
    }
}
