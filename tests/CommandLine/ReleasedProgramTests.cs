using System.Diagnostics;
using System.Text.Json.Nodes;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>The finished program, as it is handed out: native, in one file, and as a .NET tool.</summary>
[Trait("Slow", "yes")]
public sealed class ReleasedProgramTests(ReleasedProgram released, PublishedDemonstration published, ITestOutputHelper output)
    : IClassFixture<ReleasedProgram>
{
    private const double MiB = 1024 * 1024;

    private static readonly string[] DoseAsked = ["dose", "2-3 x hold 30-60 s, rest 20 s, each side", "--weeks", "6"];

    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void It_is_one_file_with_the_picture_library_beside_it()
    {
        Assert.Equal(
            ["LICENSE", "gradus", "gradus.cdx.json", "libSkiaSharp.so", "licences"],
            Directory.GetFileSystemEntries(released.Native).Select(e => Path.GetFileName(e)).Order(StringComparer.Ordinal)
        );
        var size = new FileInfo(Path.Combine(released.Native, "gradus")).Length / MiB;
        output.WriteLine($"{size:0.0} MiB");
        Assert.InRange(size, 1, 40);
    }

    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void It_publishes_the_demonstration_byte_for_byte_as_the_other_does()
    {
        var sites = released.Empty("sites");
        var answer = released.Gradus("publish", Repository.Path("content"), "--to", sites, "--today", "2026-12-07");
        Assert.Equal((published.Answer.Status, ""), (answer.Status, answer.Error));
        Assert.Equal(FolderBytes.Of(published.Read()), FolderBytes.Of(sites));
    }

    public static TheoryData<string> Words =>
        [
            "audit {} --format text",
            "audit {} --format json",
            "audit {} --format sarif",
            "audit {} --format html",
            "screen {} --format json",
            "load {} --format json",
            "ranges {} --format json",
            "review {} --format json",
            "review {} --format html",
            "explain",
            "--help",
        ];

    [Theory(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    [MemberData(nameof(Words))]
    public void It_says_word_for_word_what_the_other_says(string words)
    {
        string[] asked = [.. words.Split(' ').Select(w => w == "{}" ? Repository.Path("content") : w)];
        if (words.StartsWith("audit", StringComparison.Ordinal) || words.StartsWith("review", StringComparison.Ordinal))
            asked = [.. asked, "--today", "2027-02-20"];
        var answer = released.Gradus(asked);
        Assert.Equal(Gradus.RunApart([], asked), answer);
        Assert.NotEmpty(answer.Output);
    }

    /// <summary>The fastest of twenty: other tests run beside this one.</summary>
    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void It_works_out_a_dose_within_20_milliseconds()
    {
        Assert.Equal(Gradus.RunApart([], DoseAsked), released.Gradus(DoseAsked));
        var fastest = Fastest(20, DoseAsked);
        output.WriteLine($"dose: {fastest.TotalMilliseconds:0.0} ms");
        Assert.InRange(fastest.TotalMilliseconds, 0, 20);
    }

    /// <summary>The fastest of five.</summary>
    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void It_audits_the_demonstration_within_a_second()
    {
        var fastest = Fastest(5, ["audit", Repository.Path("content"), "--today", "2026-12-07"]);
        output.WriteLine($"audit: {fastest.TotalSeconds:0.00} s");
        Assert.InRange(fastest.TotalSeconds, 0, 1);
    }

    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void Its_bill_of_materials_names_every_package_with_its_licence_and_no_day()
    {
        var bill = JsonNode.Parse(File.ReadAllText(Path.Combine(released.Native, "gradus.cdx.json")))!.AsObject();
        Assert.Equal("CycloneDX", (string?)bill["bomFormat"]);
        Assert.Null(bill["serialNumber"]);
        Assert.Null(bill["metadata"]!["timestamp"]);
        var named = bill["components"]!.AsArray().ToDictionary(c => (string)c!["name"]!, c => c!["licenses"]);
        var locked = JsonNode.Parse(File.ReadAllText(Repository.Path("src/CommandLine/packages.lock.json")))!["dependencies"]![
            "net10.0"
        ]!
            .AsObject()
            .Where(p => (string?)p.Value!["type"] != "Project" && p.Key != "Microsoft.CodeAnalysis.BannedApiAnalyzers")
            .Select(p => p.Key)
            .ToArray();
        Assert.NotEmpty(locked);
        Assert.Empty(locked.Except(named.Keys));
        Assert.All(named, component => Assert.NotEmpty(component.Value!.AsArray()));
        var folders = Directory
            .GetDirectories(Path.Combine(released.Native, "licences"))
            .Select(d => Path.GetFileName(d))
            .ToArray();
        Assert.Empty(named.Keys.Except(folders));
        Assert.All(folders, folder =>
            Assert.Single(Directory.GetFiles(Path.Combine(released.Native, "licences", folder), "*.nuspec"))
        );
        output.WriteLine($"{named.Count} packages: {string.Join(", ", named.Keys)}");
    }

    [Fact(Skip = LongProof.Only, SkipType = typeof(LongProof), SkipUnless = nameof(LongProof.Whole))]
    public void The_tool_installs_from_the_folder_and_answers()
    {
        var tools = released.Empty("tools");
        var installed = ReleasedProgram.Run(
            "dotnet",
            "tool",
            "install",
            "gradus",
            "--tool-path",
            tools,
            "--source",
            released.Folder
        );
        Assert.True(installed.Status == 0, installed.Output + installed.Error);
        Assert.Equal(Gradus.RunApart([], DoseAsked), ReleasedProgram.Run(Path.Combine(tools, "gradus"), DoseAsked));
    }

    private TimeSpan Fastest(int times, string[] words) =>
        Enumerable
            .Range(0, times)
            .Select(_ =>
            {
                var watch = Stopwatch.StartNew();
                var answer = released.Gradus(words);
                Assert.Equal("", answer.Error);
                return watch.Elapsed;
            })
            .Min();
}
