using System.Text.RegularExpressions;

namespace Gradus.Tests.CommandLine;

/// <summary>What the starter files offer is what the readers take, no more and no less.</summary>
[Trait("Slow", "yes")]
public sealed class BeginKeysTests(BegunPractice begun) : IClassFixture<BegunPractice>
{
    [Fact]
    public void Each_offered_key_is_read_once_its_mark_is_taken_away()
    {
        var offers = 0;
        foreach (var (path, text) in begun.Texts)
        {
            Assert.Empty(begun.Findings(path, text).Select(f => $"{f.At} {f.Message}"));
            foreach (var (offer, inUse) in OfferedKeys.EachInUse(path, text))
            {
                Assert.Empty(begun.Findings(path, inUse).Select(f => $"{f.At} {offer}: {f.Message}"));
                offers++;
            }
        }

        Assert.True(offers > 50, $"Only {offers} keys are offered.");
    }

    [Fact]
    public void An_offer_that_the_reader_does_not_take_would_be_found()
    {
        var text = begun.Texts["practice.md"].Replace("#answers-last:", "#answers-lest:", StringComparison.Ordinal);
        var (_, inUse) = Assert.Single(OfferedKeys.EachInUse("practice.md", text), o =>
            !o.Text.Contains("#answers-lest", StringComparison.Ordinal)
        );
        Assert.Equal("'answers-lest' is no key of settings.", Assert.Single(begun.Findings("practice.md", inUse)).Message);
    }

    /// <summary>A file, and where in it a group of keys begins: behind that text.</summary>
    public static TheoryData<string, string> Groups() =>
        new()
        {
            { "practice.md", "---\n" },
            { "practice.md", "contact: { " },
            { "practice.md", "settings:\n  " },
            { "conditions.yaml", "\n- " },
            { "motions.yaml", "\n- " },
            { "sports/epee.yaml", "" },
            { "sports/epee.yaml", "demands:\n  - " },
            { "cautions/sharp-pain.md", "---\n" },
            { "cautions/sharp-pain.md", "attaches-to: { " },
            { "cautions/heavy-head.md", "---\n" },
            { "cautions/heavy-head.md", "attaches-to: { " },
            { "exercises/calf-lean.md", "---\n" },
            { "exercises/calf-lean.md", "pose:\n  " },
            { "exercises/hip-rock.md", "---\n" },
            { "exercises/hip-rock.md", "pose:\n  " },
            { "clients/perrin/client.yaml", "" },
            { "clients/perrin/client.yaml", "\nagreed: { " },
            { "clients/perrin/client.yaml", "clearances:\n  - " },
            { "clients/ada-wren/client.yaml", "" },
            { "clients/ada-wren/client.yaml", "\nagreed: { " },
            { "clients/ada-wren/client.yaml", "clearances:\n  - " },
            { "clients/perrin/programme.md", "---\n" },
            { "clients/perrin/programme.md", "sessions:\n  - " },
            { "clients/perrin/programme.md", "      - use: calf-lean\n        " },
            { "clients/ada-wren/programme.md", "---\n" },
            { "clients/ada-wren/programme.md", "sessions:\n  - " },
            { "clients/ada-wren/programme.md", "      - " },
        };

    /// <summary>A key that no reader knows is put into the group; the finding tells which keys it does know.</summary>
    [Theory, MemberData(nameof(Groups))]
    public void Every_key_that_a_reader_takes_stands_in_the_starter_file(string path, string group)
    {
        var text = OfferedKeys.AllInUse(path, begun.Texts[path]);
        var at = text.IndexOf(group, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{path} has no '{group}'.");
        var indent = group.Length - group.TrimEnd(' ').Length;
        var end = group.EndsWith("{ ", StringComparison.Ordinal)
            ? ", "
            : "\n" + new string(' ', group.EndsWith("- ", StringComparison.Ordinal) ? group.Split('\n')[^1].Length : indent);
        var said = Assert.Single(begun.Findings(path, text.Insert(at + group.Length, "zzzz: x" + end)), f =>
            f.Message.StartsWith("'zzzz'", StringComparison.Ordinal)
        );
        var keys = Regex.Match(said.Help, @"The keys here are: (.*)\.$").Groups[1].Value.Split(", ");
        Assert.NotEmpty(keys[0]);
        Assert.All(keys, key =>
            Assert.True(
                Regex.IsMatch(begun.Texts[path], $@"(^|[ {{#]){Regex.Escape(key)}:", RegexOptions.Multiline),
                $"{path} does not tell of '{key}'."
            )
        );
    }

    [Fact]
    public void A_guide_or_a_note_beside_the_practice_is_no_file_of_it() =>
        Assert.Empty(begun.Findings("README.md", "# For coaches\n\n<b>Read me</b>\n"));
}
