namespace Gradus.Tests.Auditing;

/// <summary>In what words a coach is told why a clearance is asked for: ClearanceMissing.md, floor.yaml.</summary>
public sealed class ClearanceMissingTests
{
    /// <summary>With a fever nothing is done, whatever the work is.</summary>
    [Fact]
    public void What_matters_with_everything_is_said_so()
    {
        var found = Trial
            .Of([Edit.Of("clients/tess/answers.yaml", ["- fever: no", "+ fever: yes"])])
            .Where(f => f.Rule.Text == "clearance-missing")
            .ToArray();
        Assert.NotEmpty(found);
        Assert.All(found, f => Assert.Contains("which matters with whatever is done", f.Message, StringComparison.Ordinal));
    }
}
