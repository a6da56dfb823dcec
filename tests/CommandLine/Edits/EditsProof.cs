using System.Text.RegularExpressions;
using Gradus.CommandLine;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>A practice is edited and published, edited and published, into one target. Whatever was there before: what publish
/// says and writes is what it says and writes of the same sources into an empty folder.</summary>
[Trait("Slow", "yes")]
public sealed partial class EditsProof(ITestOutputHelper output) : IDisposable
{
    private const int Edits = 2_000;
    private const ulong Seed = 20;

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-edits-").FullName;

    /// <summary>What depends on what stood in the target: how many files are new, and what else is there.</summary>
    [GeneratedRegex(@"^(?<id>[a-z-]+): (?<pages>\d+ pages?|one page), [^:]*: .*$", RegexOptions.CultureInvariant)]
    private static partial Regex Made();

    [GeneratedRegex("^(?<said>[a-z-]+: (NOT published|stopped on [0-9-]+))[.;].*$", RegexOptions.CultureInvariant)]
    private static partial Regex NotMade();

    [GeneratedRegex(
        "another form is still there|no longer in the practice|no link leads here any more|^  /",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex OfTheTarget();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_is_published_after_any_edit_is_what_a_fresh_publish_makes()
    {
        var (practice, chance) = (new EditedPractice(), new Chance(Seed));
        var target = new KeptTarget(At("kept"));
        var told = EditKinds.All.ToDictionary(k => k.Name, _ => (Made: 0, Changed: 0, Errors: 0), StringComparer.Ordinal);
        var refused = 0;
        Assert.Equal(0, Publish(practice, target, "at first").Status);
        for (var edit = 0; edit < LongProof.Cases(Edits); edit++)
        {
            practice.Remember();
            practice.Client = "";
            // Most edits find a practice that can be published: nobody leaves a mistake for long, and days come back.
            if (chance.Below(6) == 0)
                practice.BeginAgain();
            var kind = EditKinds.HasMistake(practice) && chance.Below(3) == 0 ? EditKinds.Mending : chance.Of(EditKinds.All);
            if (!kind.Apply(practice, target, chance))
                continue;
            var before = KeptTarget.In(target.Folder);
            var (status, isRefused) = Publish(practice, target, $"edit {edit}, {kind.Name}");
            refused += isRefused ? 1 : 0;
            var (made, changed, errors) = told[kind.Name];
            told[kind.Name] = (
                made + 1,
                changed + (before.SequenceEqual(KeptTarget.In(target.Folder)) ? 0 : 1),
                errors + (status == 1 ? 1 : 0)
            );
        }

        foreach (var (name, kind) in told)
            output.WriteLine($"{name, -32}{kind.Made, 5} made {kind.Changed, 5} changed the target {kind.Errors, 5} with errors");
        output.WriteLine(
            $"{told.Values.Sum(k => k.Made)} edits of {told.Values.Count(k => k.Made > 0)} kinds, {refused} refused"
        );
        Assert.True(told.Values.Count(k => k.Made > 0) >= 20);
        Assert.True(told.Values.Sum(k => k.Changed) > told.Values.Sum(k => k.Made) / 4);
        Assert.True(told.Values.Sum(k => k.Errors) > 0);
    }

    /// <summary>Shows that the proof looks: a file is changed behind the back of publish, which is not called.</summary>
    [Fact]
    public void A_target_that_nobody_puts_right_is_found()
    {
        var (practice, target) = (new EditedPractice(), new KeptTarget(At("kept")));
        Assert.Equal(0, Publish(practice, target, "at first").Status);
        var fresh = KeptTarget.In(At("fresh"));
        Assert.Empty(target.Differences(fresh));
        File.AppendAllText(Path.Combine(target.Folder, "tess", "index.html"), " ");
        Assert.Equal(["tess/index.html"], target.Differences(fresh));
        File.Delete(Path.Combine(target.Folder, "tess", "index.html"));
        File.WriteAllText(Path.Combine(target.Folder, "bram", "new.html"), "");
        Assert.Equal(["tess/index.html", "bram/new.html"], target.Differences(fresh));
    }

    /// <returns>The status, and whether the target stood in the way at first.</returns>
    private (int Status, bool IsRefused) Publish(EditedPractice practice, KeptTarget target, string what)
    {
        EditedPractice.Write(practice.Theme, At("theme"));
        EditedPractice.Write([], At("fresh"));
        var (kept, isRefused) = (Run(practice, target.Folder, "one"), false);
        while (kept.Status == 2)
        {
            // What is no site any more is left alone, and the coach told to move it: so it is moved.
            isRefused = true;
            var top = Directory
                .EnumerateFileSystemEntries(target.Folder)
                .FirstOrDefault(entry => kept.Error.Contains($"'{entry}'", StringComparison.Ordinal));
            Assert.True(top is not null, $"{what}: {kept.Error}");
            if (Directory.Exists(top))
                Directory.Delete(top, recursive: true);
            else
                File.Delete(top);
            target.Forget(Path.GetFileName(top));
            kept = Run(practice, target.Folder, "one");
        }

        var fresh = Run(practice, At("fresh"), "two");
        Assert.True(
            fresh.Status == kept.Status && fresh.Error == kept.Error,
            $"{what}: {fresh.Status} {kept.Status} {kept.Error}"
        );
        Assert.True(Said(fresh.Output) == Said(kept.Output), $"{what}:\n{Said(fresh.Output)}\n---\n{Said(kept.Output)}");
        Assert.True(FolderBytes.Of(At("one")).SequenceEqual(FolderBytes.Of(At("two"))), $"{what}: other editions");
        var differences = target.Differences(KeptTarget.In(At("fresh"))).ToArray();
        Assert.True(differences.Length == 0, $"{what}: {string.Join(", ", differences)}");
        practice.Take(At("two"));
        return (kept.Status, isRefused);
    }

    private Answer Run(EditedPractice practice, string to, string sources)
    {
        EditedPractice.Write(practice.Sources, At(sources));
        string[] words =
        [
            "publish",
            At(sources),
            "--to",
            to,
            "--theme",
            At("theme"),
            .. practice.FormWords,
            "--today",
            practice.Today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            .. practice.Client.Length > 0 ? new[] { "--client", practice.Client } : [],
        ];
        var (status, said, error) = Overheard.While(() => Commands.All().RunAsync(words));
        return new(
            status,
            said.Replace(At(sources), "SOURCES", StringComparison.Ordinal)
                .Replace(Path.Combine(to, LinkForm.FolderName), "HOSTED", StringComparison.Ordinal),
            error
        );
    }

    private static string Said(string output) =>
        string.Join(
            '\n',
            output
                .Split('\n')
                .Where(line => !OfTheTarget().IsMatch(line))
                .Select(line =>
                    Made().Match(line) is { Success: true } made ? $"{made.Groups["id"]}: {made.Groups["pages"]}"
                    : NotMade().Match(line) is { Success: true } not ? not.Groups["said"].Value
                    : line
                )
        );

    private string At(string name) => name == "kept" ? Path.Combine(folder, name, "site") : Path.Combine(folder, name);
}
