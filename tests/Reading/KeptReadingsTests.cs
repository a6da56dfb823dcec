using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>A practice that is read again and again comes out as if it were read for the first time.</summary>
public sealed class KeptReadingsTests(ITestOutputHelper output)
{
    private static readonly int Rounds = LongProof.Cases(2000);

    /// <summary>Seed 20261208, on every run the same: each round changes one file of what the round before left.</summary>
    [Fact]
    public void What_is_kept_and_read_again_is_what_a_first_reading_gives()
    {
        var chance = new Chance(20261208);
        var golden = LittlePractice.Golden;
        var paths = golden.Files.Select(f => f.Key).ToArray();
        var (kept, now, again) = (new KeptReadings(), golden, 0);
        var kinds = new SortedDictionary<string, int>(StringComparer.Ordinal);
        for (var round = 0; round < Rounds; round++)
        {
            var (kind, next) = Changed(golden, now, chance.Of(paths), chance);
            kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
            now = next;
            var (some, all) = (new Findings(), new Findings());
            var first = PracticeReader.Read(now.Folder, all);
            var second = PracticeReader.Read(now.Folder, some, kept);
            Assert.Equal(Texts(all), Texts(some));
            Same(first, second);
            again += kept.ReadAnew;
        }

        output.WriteLine(
            $"{Rounds} rounds: {string.Join(", ", kinds.Select(k => $"{k.Value} {k.Key}"))}; {again} parts read anew"
        );
        Assert.Equal(4, kinds.Count);
    }

    [Fact]
    public void What_did_not_change_is_not_read()
    {
        var kept = new KeptReadings();
        var practice = LittlePractice.Golden;
        PracticeReader.Read(practice.Folder, [], kept);
        Assert.True(kept.ReadAnew > 10);
        PracticeReader.Read(practice.Folder, [], kept);
        Assert.Equal(0, kept.ReadAnew);
        var exercise = practice.Files.Select(f => f.Key).First(f => f.StartsWith("exercises/", StringComparison.Ordinal));
        PracticeReader.Read(practice.With(exercise, practice[exercise] + "\nOne sentence more.\n").Folder, [], kept);
        Assert.InRange(kept.ReadAnew, 1, 2);
    }

    [Fact]
    public void What_is_said_of_a_clip_is_said_again_when_the_text_that_showed_it_first_lets_go_of_it()
    {
        var showing = ClipTests
            .Golden("WEBVTT\n")
            .Edit("exercises/calf-brace.md", "Push for {press}.", "Push for {press}. ![The heel sinks](sink.webm)");
        var kept = new KeptReadings();
        PracticeReader.Read(showing.Folder, [], kept);
        var without = showing.Edit("exercises/calf-brace.md", " ![The heel sinks](sink.webm)", "");
        var (some, all) = (new Findings(), new Findings());
        PracticeReader.Read(without.Folder, some, kept);
        PracticeReader.Read(without.Folder, all);
        Assert.Contains(all, f => f.Message.StartsWith("There is no caption", StringComparison.Ordinal));
        Assert.Equal(Texts(all), Texts(some));
    }

    private static (string Kind, LittlePractice Practice) Changed(
        LittlePractice golden,
        LittlePractice now,
        string path,
        Chance chance
    )
    {
        var before = golden.Files.First(f => f.Key == path).Value;
        var stands = now.Files.Any(f => f.Key == path);
        return chance.Below(4) switch
        {
            0 => ("damaged", now.With(path, Mutation.Of(before, chance))),
            1 when stands => ("taken away", now.Without(path)),
            2 => ("a file beside it", now.With(path + chance.Below(3), before)),
            _ => ("put back", now.With(path, before)),
        };
    }

    private static string[] Texts(Findings findings) =>
        [.. findings.InOrder().Select(f => $"{f.At} +{f.Length} {f.Level} {f.Rule} {f.Client} {f.Message} {f.Help}")];

    private static void Same(PracticeReading first, PracticeReading second)
    {
        Assert.Equal(first.Clients, second.Clients);
        Assert.Equal(first.Practice is null, second.Practice is null);
        if (first.Practice is not { } one || second.Practice is not { } other)
            return;
        Assert.Equal(one.Card, other.Card);
        Assert.Equal(one.Conditions, other.Conditions);
        Assert.Equal(one.Sports, other.Sports);
        Assert.Equal(one.Cautions, other.Cautions);
        Assert.Equal(one.Exercises, other.Exercises);
        Assert.Equal(one.Clients, other.Clients);
        Assert.Equal(one.Measures, other.Measures);
        Assert.Equal(one.Glossary, other.Glossary);
        Assert.Equal(one.Accepted, other.Accepted);
        Assert.Equal(one.Translations, other.Translations);
        Assert.Equal(one.Words.Languages, other.Words.Languages);
        Assert.Equal(Files(one), Files(other));
    }

    /// <summary>The files of pictures and clips, by path and bytes.</summary>
    private static string[] Files(Practice practice) =>
        [
            .. practice.Pictures.SelectMany(p => p.Files.Select(f => $"{p.Path} {f.Path} {f.Bytes.Length}")),
            .. practice.Clips.Select(c => $"{c.Path} {c.Bytes.Length} {c.Still} {c.Captions.Count}"),
        ];
}
