using Gradus.Tests.House;

namespace Gradus.Tests.Mutants;

/// <summary>A rule is worth what it catches, and a test too: a small change of what judges or decides must fail some test. An hour
/// and more, so only under <c>tests/run --long</c>, or for one folder with <c>GRADUS_MUTANTS=Auditing/Rules/Sides</c>.</summary>
[Trait("Slow", "yes")]
public sealed class MutantsTests(ITestOutputHelper output)
{
    private const double LeastKilled = 0.9;

    private static readonly string? Asked = Environment.GetEnvironmentVariable("GRADUS_MUTANTS");

    [Theory]
    [InlineData("Auditing")]
    [InlineData("Training")]
    public void Nine_of_ten_are_noticed_and_what_is_not_has_a_reason(string room)
    {
        var asked = Asked ?? room;
        Assert.SkipUnless(
            (LongProof.Whole || Asked is not null) && $"{asked}/".StartsWith($"{room}/", StringComparison.Ordinal),
            "Takes too long."
        );
        var references = Directory
            .GetFiles(AppContext.BaseDirectory, "*.dll")
            .Concat(((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator))
            .DistinctBy(path => Path.GetFileName(path), StringComparer.Ordinal);
        var run = new MutantRun(
            MutatedRoom.Of(room, System.Reflection.Assembly.Load($"Gradus.{room}"), references),
            AppContext.BaseDirectory,
            context => JudgeCase.In(context, "Gradus.Tests.Auditing", "Gradus.Tests.Trainings")
        );
        var judged = run.Judge(m => m.File.StartsWith($"{asked}/", StringComparison.Ordinal)).ToArray();
        var report = new MutantReport(judged, Survivors.Read(Repository.Path("tests/Mutants/survivors.txt")));
        output.WriteLine($"{run.Tests} tests judge; no judges are\n{string.Join('\n', run.NoJudges)}");
        output.WriteLine(report.Table());
        Assert.NotEmpty(judged);
        Assert.Empty(report.WithoutReason());
        Assert.True(report.Killed >= LeastKilled, $"{report.Killed:P1} of the mutants of {room} are noticed.");
    }
}
