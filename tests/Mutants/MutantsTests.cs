using System.Reflection;
using Gradus.Tests.House;

namespace Gradus.Tests.Mutants;

/// <summary>A rule is worth what it catches, and a test too: a small change of what judges or decides must fail some test. Hours,
/// so only under <c>tests/run --long</c>, or for one folder or file with <c>GRADUS_MUTANTS=Auditing/Rules/Sides</c>.</summary>
[Trait("Slow", "yes")]
public sealed class MutantsTests(ITestOutputHelper output)
{
    private const double LeastKilled = 0.9;

    /// <summary>Each is compiled and judged by itself. A file belongs to the longest that it lies in.</summary>
    private static readonly string[] All = ["Auditing", "Auditing/Pages", "Auditing/Pages/Styles", "Auditing/Rules", "Training"];

    private static readonly string Asked = Environment.GetEnvironmentVariable("GRADUS_MUTANTS") ?? "";

    public static TheoryData<string> Parts => [.. All];

    [Theory, MemberData(nameof(Parts))]
    public void Nine_of_ten_are_noticed_and_what_is_not_has_a_reason(string part)
    {
        Assert.SkipUnless(LongProof.Whole || Asked.Length > 0, "It takes hours; tests/run --long has it.");
        bool IsAsked(string file) => PartOf(file) == part && file.StartsWith(Asked, StringComparison.Ordinal);
        var name = part.Split('/')[0];
        var references = Directory
            .GetFiles(AppContext.BaseDirectory, "*.dll")
            .Concat(((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator))
            .DistinctBy(path => Path.GetFileName(path), StringComparer.Ordinal)
            .Where(IsOfDotNet);
        var room = MutatedRoom.Of(name, Assembly.Load($"Gradus.{name}"), references, IsAsked);
        Assert.SkipWhen(Asked.Length > 0 && room.Mutants.Count == 0, "Another part is asked for.");
        var run = new MutantRun(room, AppContext.BaseDirectory, context =>
            JudgeCase.In(context, "Gradus.Tests.Auditing", "Gradus.Tests.Trainings")
        );
        var judged = run.Judge().ToArray();
        var report = new MutantReport(judged, Survivors.Read(Repository.Path("tests/Mutants/survivors.txt")));
        output.WriteLine($"{run.Tests} tests judge. No judges, as they fail or are slow:\n{string.Join('\n', run.NoJudges)}");
        output.WriteLine(report.Table());
        Assert.NotEmpty(judged);
        Assert.Empty(report.WithoutReason());
        Assert.True(report.Killed >= LeastKilled, $"{report.Killed:P1} of the mutants in {part} are noticed.");
    }

    private static string? PartOf(string file) =>
        All.Where(part => file.StartsWith(part + "/", StringComparison.Ordinal)).MaxBy(part => part.Length);

    private static bool IsOfDotNet(string path)
    {
        try
        {
            return AssemblyName.GetAssemblyName(path).Name is not null;
        }
        catch (BadImageFormatException)
        {
            return false;
        }
    }
}
