namespace Gradus.Tests.Reading;

/// <summary>What is taken from a session of a shared programme.</summary>
public sealed partial class SharedProgrammeTests
{
    [Theory]
    [InlineData("leave-out: press", "Ankles: wall-calf-stretch; Less: wall-calf-stretch")]
    [InlineData("leave-out: press\n    in: Less", "Ankles: wall-calf-stretch calf-press; Less: wall-calf-stretch")]
    [InlineData(
        "add: calf-press\n    in: Ankles",
        "Ankles: wall-calf-stretch calf-press calf-press; Less: wall-calf-stretch calf-press"
    )]
    [InlineData(
        "instead: press\n    use: wall-calf-stretch\n    in: Ankles",
        "Ankles: wall-calf-stretch wall-calf-stretch; Less: wall-calf-stretch wall-calf-stretch"
    )]
    [InlineData(
        "leave-out: press\n    in: Less\n    because: x\n  - change: press\n    in: Ankles\n    side: front leg",
        "Ankles: wall-calf-stretch calf-press; Less: wall-calf-stretch"
    )]
    public void What_is_taken_from_a_session_is_other_where_that_is(string difference, string sessions)
    {
        var (practice, findings) = Read(With(difference), Taking("share: 50"));
        Assert.Empty(findings.Select(f => f.Message));
        Assert.Equal(
            sessions,
            string.Join(
                "; ",
                Programme(practice).AllSessions.Select(s => $"{s.Name}: {string.Join(' ', s.Do.Select(u => u.Exercise.Value))}")
            )
        );
    }

    [Theory]
    [InlineData("uses: [presss]", "There is no use 'presss' in 'Ankles'.", "Did you mean 'press'?")]
    [InlineData("share: 0", "'share' is '0', but it can only be a whole number from 1 to 100.", null)]
    [InlineData("do: [{ use: calf-press }]", "It says what is done, and that its uses are those of another session.", null)]
    [InlineData("instead-of: Ankle", "There is no session 'Ankle' in this programme.", "Did you mean 'Ankles'?")]
    public void What_cannot_be_taken_from_a_session_is_said(string taken, string message, string? help)
    {
        var finding = Assert.Single(Read("from: lunge\nstart: 2026-12-07", Taking(taken)).Findings);
        Assert.Equal(("programmes/lunge.md", message), (finding.At.File, finding.Message));
        if (help is not null)
            Assert.Equal(help, finding.Help);
    }

    [Fact]
    public void A_session_is_taken_from_one_that_is_there_and_from_no_alternate()
    {
        var findings = Read(
            "from: lunge\nstart: 2026-12-07",
            Taking("share: 50").Replace("of: Ankles", "of: Less", StringComparison.Ordinal)
        ).Findings;
        Assert.Equal("There is no session 'Less' in this programme.", Assert.Single(findings).Message);
    }

    private static string Taking(string taken) =>
        Shared[..Shared.IndexOf("alternate:", StringComparison.Ordinal)]
        + $"alternate:\n  - {{ name: Less, of: Ankles, kind: short, {taken} }}\n---\nHello.";
}
