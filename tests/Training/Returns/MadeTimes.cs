namespace Gradus.Tests.Trainings;

/// <summary>How long the sessions of the made programme take, counted by hand: get ready 5 s before each exercise; a press of
/// 2 × 10
/// s with 20 s between, on each side, and 10 s to change sides: 90 s in all; a hold of 2 × 30 s on each side likewise, with no
/// rest written: 130 s; 10 s from one exercise to the next.</summary>
internal static class MadeTimes
{
    private const int Push = 5 + (2 * ((2 * 10) + 20)) + 10;
    private const int Sway = 5 + (2 * 2 * 30) + 10;

    public static readonly Dictionary<int, int> Seconds = new()
    {
        [1] = Push + 10 + Sway,
        [2] = Push,
        [3] = Sway,
        [4] = Push,
    };
}
