namespace Gradus.Tests.Browser;

/// <summary>The guided session as somebody with a kitchen timer would lead through it: a quarter of a second after the other is
/// counted down, and nothing is reckoned ahead.</summary>
internal sealed class SecondGuide(GuideScripts.Led asked)
{
    private readonly GuideScripts.Piece[] steps = asked.Steps;
    private readonly int[] extra = new int[asked.Steps.Length];
    private readonly SortedSet<string> @out = new(asked.Out ?? [], StringComparer.Ordinal);
    private readonly SortedSet<int> did = [];
    private readonly HashSet<string> learnt = asked.Learnt is { } known ? [.. known] : [.. asked.Steps.Select(s => s.Exercise)];

    private string phase = "ready";
    private int at,
        left;

    public static string Of(GuideScripts.Led asked)
    {
        var one = new SecondGuide(asked);
        var acts = asked.Actions.ToLookup(a => a.At);
        for (var now = 0; now <= asked.Ticks[^1]; now += GuideMaker.Grid)
        {
            if (now > 0)
                one.Count();
            foreach (var act in acts[now])
                one.Do(act.Do);
        }

        var ahead = one.phase is "done" or "ended" ? 0 : one.left + one.Rest();
        return $"{one.phase} {(one.phase is "done" or "ended" ? 0 : one.at)} {one.left} {ahead} out "
            + $"{string.Join(',', one.@out)} did {string.Join(',', one.did)}";
    }

    private int Rest() =>
        Enumerable.Range(at + 1, steps.Length - at - 1).Where(i => !@out.Contains(steps[i].Exercise)).Sum(Length);

    private int Length(int step) => (steps[step].Seconds + extra[step]) * 1000;

    private void Count()
    {
        if (phase != "running")
            return;
        left -= GuideMaker.Grid;
        if (left > 0)
            return;
        if (steps[at].Kind == "hold")
            did.Add(at);
        Arrive(Next(at), walking: true);
    }

    private int Next(int from)
    {
        for (var i = from + 1; i < steps.Length; i++)
            if (!@out.Contains(steps[i].Exercise))
                return i;
        return steps.Length;
    }

    private int Before(int from)
    {
        for (var i = from - 1; i >= 0; i--)
            if (!@out.Contains(steps[i].Exercise))
                return i;
        return from;
    }

    /// <param name="walking">Whether it is the time that leads there; then somebody may have to be waited for.</param>
    private void Arrive(int step, bool walking)
    {
        if (step == steps.Length)
        {
            (phase, left) = ("done", 0);
            return;
        }

        (at, left) = (step, Length(step));
        if (walking)
            phase = Waits(step) ? "waiting" : "running";
    }

    /// <summary>At the very first step that is left, even if it is a way between, whoever does not know what comes; later at
    /// another exercise or side than the last step that was no way between.</summary>
    private bool Waits(int step)
    {
        var own = steps[step];
        if (step == Next(-1) && !learnt.Contains(own.Exercise))
            return true;
        if (own.Kind is "transition" or "switch" or "rest")
            return false;
        var before = steps.Take(step).LastOrDefault(s => s.Kind is "hold" or "get-ready");
        var isOther = before is not null && (before.Exercise != own.Exercise || before.Side != own.Side);
        return isOther && (asked.Wait || !learnt.Contains(own.Exercise));
    }

    private void Do(string act)
    {
        if (act == "start")
        {
            if (phase == "ready")
                Arrive(Next(-1), walking: true);
            return;
        }

        if (act == "end")
        {
            if (phase is not ("done" or "ended"))
                (phase, left) = ("ended", 0);
            return;
        }

        if (phase is not ("running" or "paused" or "waiting"))
            return;
        switch (act)
        {
            case "pause":
                if (phase == "running")
                    phase = "paused";
                break;
            case "go":
                phase = "running";
                break;
            case "back":
                Jump(phase != "waiting" && Length(at) - left > 3000 ? at : Before(at));
                break;
            case "forward":
                Jump(Next(at));
                break;
            case "longer":
                (extra[at], left) = (extra[at] + 10, left + 10_000);
                break;
            case "ease":
                phase = "paused";
                break;
            case "stop":
                var hurting = Places(steps[at]).ToHashSet();
                @out.UnionWith(
                    steps.Where(s => s.Exercise == steps[at].Exercise || Places(s).Any(hurting.Contains)).Select(s => s.Exercise)
                );
                Stop();
                break;
        }
    }

    private void Jump(int step)
    {
        if (phase == "waiting" && step < steps.Length)
            phase = "running";
        Arrive(step, walking: false);
    }

    private void Stop()
    {
        Arrive(Next(at), walking: false);
        if (phase != "done")
            phase = "waiting";
    }

    private static IEnumerable<string> Places(GuideScripts.Piece piece)
    {
        string[] worked = piece.Side.Length > 0 ? [piece.Side] : ["left", "right"];
        foreach (var load in piece.Loads)
        {
            if (load.Split(':') is not [var region, var which])
                yield return load;
            else
                foreach (var side in worked)
                    yield return $"{(which == "work" ? side : side == "left" ? "right" : "left")} {region}";
        }
    }
}
