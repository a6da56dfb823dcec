using Gradus.Domain;

namespace Gradus.Tests.CommandLine;

/// <summary>What a client measured alone reaches the coach as a line for readings.csv: the mean of three tries, or a word where
/// they lie more than 1.5 cm apart (common practice, no source).</summary>
public sealed class SelfTestsTests : IDisposable
{
    private readonly ReceivingFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(
        "9.5 10 10",
        "2026-12-07, left knee to wall: 9.5, 10, 10 cm; for readings.csv: 2026-12-07,knee to wall,left,active,9.8,cm,tape at home"
    )]
    [InlineData("9.5 10 11", "11 cm; for readings.csv: 2026-12-07,knee to wall,left,active,10.2,cm,tape at home")]
    [InlineData("9.5 10 11.5", "2026-12-07, left knee to wall: 9.5, 10, 11.5 cm are 2 apart; ask for three others.")]
    [InlineData("9.5 10", "9.5, 10 cm; three tries make a reading, so ask for them again.")]
    public void It_is_told_with_the_line_to_type_in(string numbers, string said)
    {
        var measured = ReceivingFolder.Line("calf-lean", Side.Left) with
        {
            Measured = [.. numbers.Split(' ').Select(n => decimal.Parse(n, System.Globalization.CultureInfo.InvariantCulture))],
        };
        var session = ReceivingFolder.Session(folder.Perrin, 7) with { Exercises = [measured] };
        var answer = folder.Receive(folder.Sent("sent.csv", session));
        Assert.Contains("measured at home: 2026-12-07, left knee to wall: ", answer.Output, StringComparison.Ordinal);
        Assert.Contains(said, answer.Output, StringComparison.Ordinal);
        Assert.Equal(0, answer.Status);
    }
}
