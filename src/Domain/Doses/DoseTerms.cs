namespace Gradus.Domain;

/// <summary>The terms beside the work. What is null is not written.</summary>
/// <param name="Rest">Between sets, 0 s to 15 min.</param>
/// <param name="Pause">Between the counted repetitions of an action, 0 s to 15 min.</param>
/// <param name="Switch">Between the two sides, 0 s to 15 min.</param>
/// <param name="Load">What is held or worn, as the coach writes it, with single spaces.</param>
/// <param name="Leave">How many good repetitions are left undone at the end of a set, 0 to 100.</param>
public sealed record DoseTerms(
    Seconds? Rest = null,
    Seconds? Pause = null,
    Seconds? Switch = null,
    SideTerm? Side = null,
    Plus? Plus = null,
    Tempo? Tempo = null,
    string? Load = null,
    int? Leave = null
)
{
    public static readonly DoseTerms None = new();

    public Seconds? Rest
    {
        get;
        init => field = DoseBounds.Checked(value, DoseBounds.Rests, nameof(Rest));
    } = DoseBounds.Checked(Rest, DoseBounds.Rests, nameof(Rest));

    public Seconds? Pause
    {
        get;
        init => field = DoseBounds.Checked(value, DoseBounds.Rests, nameof(Pause));
    } = DoseBounds.Checked(Pause, DoseBounds.Rests, nameof(Pause));

    public Seconds? Switch
    {
        get;
        init => field = DoseBounds.Checked(value, DoseBounds.Rests, nameof(Switch));
    } = DoseBounds.Checked(Switch, DoseBounds.Rests, nameof(Switch));

    public string? Load
    {
        get;
        init => field = CheckedLoad(value);
    } = CheckedLoad(Load);

    public int? Leave
    {
        get;
        init => field = CheckedLeave(value);
    } = CheckedLeave(Leave);

    private static string? CheckedLoad(string? load) => load is null ? null : DoseBounds.CheckedText(load, nameof(Load));

    private static int? CheckedLeave(int? leave) =>
        leave is { } left ? DoseBounds.Checked(left, DoseBounds.Leave, nameof(Leave)) : null;
}
