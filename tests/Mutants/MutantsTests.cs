using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Gradus.Tests.Auditing;
using Gradus.Tests.House;

namespace Gradus.Tests.Mutants;

/// <summary>A rule is worth what it catches, and a test too: a small change of what judges or decides must fail some test. An
/// hour or two, so only under <c>tests/run --long</c>, or for one part, folder or file with
/// <c>GRADUS_MUTANTS=Auditing/Rules/Sides</c>; a part is asked for without those that lie in it. What is judged is written to
/// <c>.artifacts/mutants</c> as it goes, and a run that was cut off goes on from there.</summary>
[Trait("Slow", "yes")]
public sealed class MutantsTests(ITestOutputHelper output)
{
    private const double LeastKilled = 0.9;

    /// <summary>Of a part with more mutants so many are judged: at nine in ten that says all of it within five of a hundred (400
    /// would say it within three, and take more than twice as long).</summary>
    private const int Most = 150;

    /// <summary>The same where half the tests come by every mutant and each takes its time: within seven of a hundred.</summary>
    private const int Fewer = 80;

    /// <summary>What guards people first.</summary>
    private static readonly Sample Sample = new([
        ("Auditing/Rules/Cautions", Most),
        ("Auditing/Rules/Screening", Most),
        ("Auditing/Rules/Sides", Most),
        ("Auditing/Rules/Ranges", Most),
        ("Auditing/Rules/Weeks", Most),
        ("Auditing/Rules", Most),
        ("Auditing/Pages", Fewer),
        ("Auditing/Pages/Styles", Fewer),
        ("Auditing", Fewer),
        ("Training/Screening", Most),
        ("Training/Returns", Most),
        ("Training/Ranges", Most),
        ("Training", Fewer),
    ]);

    /// <summary>Proofs over thousands of cases, and those that gather what other tests look at one by one: they take longer than
    /// all others together.</summary>
    private static readonly string[] NoJudges =
    [
        nameof(DemonstrationTests),
        nameof(EditionProofTests),
        nameof(MarkdownOnPagesTests),
        nameof(OtherLanguagesTests),
        nameof(PlantedFaultsTableTests),
        nameof(SessionSumTests),
    ];

    private static readonly string Asked = Environment.GetEnvironmentVariable("GRADUS_MUTANTS") ?? "";

    /// <param name="name">A folder of src.</param>
    /// <param name="namespaces">Whose tests judge it.</param>
    [Theory]
    [InlineData("Training", "Gradus.Tests.Trainings", "Gradus.Tests.Auditing")]
    [InlineData(
        "Auditing",
        "Gradus.Tests.Auditing",
        "Gradus.Tests.Auditing.Pages",
        "Gradus.Tests.Auditing.Pages.Styles",
        "Gradus.Tests.Auditing.Pages.Trees"
    )]
    public void Nine_of_ten_are_noticed_and_what_is_not_has_a_reason(string name, params string[] namespaces)
    {
        Assert.SkipUnless(LongProof.Whole || Asked.Length > 0, "It takes hours; tests/run --long has it.");
        Assert.SkipUnless(Asked.StartsWith(name, StringComparison.Ordinal) || Asked.Length == 0, "Another room is asked for.");
        var room = MutatedRoom.Of(name, Assembly.Load($"Gradus.{name}"), References(), IsAsked, Sample.Of);
        var progress = new Progress(Repository.Path($".artifacts/mutants/{name}.txt"), Build());
        var run = new MutantRun(
            room,
            AppContext.BaseDirectory,
            (context, isWanted) => JudgeCase.In(context, type => isWanted(type) && !NoJudges.Contains(type), namespaces),
            progress,
            "Gradus.Tests.Trainings"
        );
        var judged = run.Judge().ToArray();
        var found = room.Found.CountBy(m => Sample.PartOf(m.File)).ToDictionary();
        var report = new MutantReport(judged, found, Sample, Survivors.Read(Repository.Path("tests/Mutants/survivors.txt")));
        output.WriteLine($"{run.Tests} tests judge. No judges, as they fail or are slow:\n{string.Join('\n', run.NoJudges)}");
        output.WriteLine(report.Table());
        Assert.NotEmpty(judged);
        Assert.Empty(report.WithoutReason());
        Assert.All(report.Killed(), part => Assert.True(part.Share >= LeastKilled, $"{part.Part}: {part.Share:P1} are noticed."));
    }

    private static bool IsAsked(string file) =>
        Sample.HasPart(Asked) ? Sample.PartOf(file) == Asked : file.StartsWith(Asked, StringComparison.Ordinal);

    private static IEnumerable<string> References() =>
        Directory
            .GetFiles(AppContext.BaseDirectory, "*.dll")
            .Concat(((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator))
            .DistinctBy(path => Path.GetFileName(path), StringComparer.Ordinal)
            .Where(IsOfDotNet);

    /// <summary>Stands for all of ours that is built: the same sources make the same bytes.</summary>
    private static string Build() =>
        Convert.ToHexString(
            SHA256.HashData(
                Encoding.UTF8.GetBytes(
                    string.Join(
                        '\n',
                        Directory
                            .GetFiles(AppContext.BaseDirectory, "Gradus.*.dll")
                            .Order(StringComparer.Ordinal)
                            .Select(path => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path))))
                    )
                )
            )
        );

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
