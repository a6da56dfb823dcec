using Gradus.Domain;
using Gradus.Media;
using Gradus.Reading;
using Gradus.Tests.Media;

namespace Gradus.Tests.Reading;

public sealed class ClipTests
{
    private const string File = "exercises/heel-sink.md";
    private const string Captions =
        "WEBVTT\n\nNOTE The second take.\n\nfirst\n00:00.100 --> 00:00.400\nLet the heel sink\n&amp; wait.\n\n00:00.400 "
        + "--> 00:01.000\nAnd up.\n";

    [Fact]
    public void A_clip_is_read_with_its_size_its_still_and_its_captions()
    {
        var clip = Assert.Single(Golden().Read().Clips);
        Assert.Equal(
            ("exercises/sink.webm", 64, 48, true, "exercises/sink.jpg"),
            (clip.Path, clip.Width, clip.Height, clip.Sounds, clip.Still)
        );
        var captions = Assert.Single(clip.Captions);
        Assert.Equal("en", captions.Language);
        Assert.Equal([new(100, 400, "Let the heel sink\n& wait."), new(400, 1000, "And up.")], captions.Cues);
        Assert.Equal(
            "WEBVTT\n\n00:00:00.100 --> 00:00:00.400\nLet the heel sink\n&amp; wait.\n\n00:00:00.400 --> 00:00:01.000\nAnd up.\n",
            captions.Written()
        );
    }

    [Fact]
    public void A_plan_says_in_words_what_is_said_and_hands_over_clip_and_still_without_what_they_tell()
    {
        var practice = Golden().Read();
        var plan = Planned.For(practice, practice.Clients[0]);
        Assert.Equal(
            ("clips/exercises/sink.webm", "exercises/sink.jpg"),
            (Assert.Single(plan.Clips).Path, Assert.Single(plan.Pictures).Path)
        );
        Assert.Empty(MediaFile.Of(plan.Clips[0].Bytes)?.Tells ?? ["nothing was read"]);
        var line = plan
            .Exercises.SelectMany(e => e.Text.Do.Lines())
            .First(l => l.Contains("What is said", StringComparison.Ordinal));
        Assert.EndsWith("What is said: Let the heel sink & wait. And up.", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 1, "Captions begin with a line that says WEBVTT.")]
    [InlineData("webvtt\n\n00:01.000 --> 00:02.000\nSink\n", 1, "Captions begin with a line that says WEBVTT.")]
    [InlineData("WEBVTT\n", 2, "There is no caption in this file.")]
    [InlineData(
        "WEBVTT\n\n00:01,000 --> 00:02,000\nSink\n",
        3,
        "These are no times of a caption, or something stands beside them."
    )]
    [InlineData(
        "WEBVTT\n\n00:01.000 --> 00:02.000 align:start\nSink\n",
        3,
        "These are no times of a caption, or something stands beside them."
    )]
    [InlineData(
        "WEBVTT\n\none\n00:01.000 -> 00:02.000\nSink\n",
        4,
        "These are no times of a caption, or something stands beside them."
    )]
    [InlineData("WEBVTT\n\n00:02.000 --> 00:02.000\nSink\n", 3, "This caption ends before it begins.")]
    [InlineData(
        "WEBVTT\n\n00:02.000 --> 00:03.000\nSink\n\n00:01.000 --> 00:02.000\nUp\n",
        6,
        "This caption begins before the one above it."
    )]
    [InlineData("WEBVTT\n\n00:02.000 --> 00:03.000\n\nSink\n", 3, "This caption has no words.")]
    [InlineData(
        "WEBVTT\n\n00:02.000 --> 00:03.000\nSink\n<script>x</script>\n",
        5,
        "Captions are plain words, without anything in angle brackets."
    )]
    [InlineData(
        "WEBVTT\n\nSTYLE\n::cue { color: red }\n",
        4,
        "These are no times of a caption, or something stands beside them."
    )]
    public void What_is_wrong_with_captions_is_said_with_its_line(string captions, int line, string message)
    {
        var finding = Golden(captions).Findings().First();
        Assert.Equal(
            ($"exercises/sink.en.vtt:{line}:1", "captions-unreadable", message),
            (finding.At.ToString(), finding.Rule.Text, finding.Message)
        );
        Assert.Equal(Level.Error, finding.Level);
    }

    [Fact]
    public void Captions_that_cannot_be_read_block_those_who_read_them()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(Golden("WEBVTT\n").Folder, findings).Practice;
        Assert.NotNull(practice);
        var reach = Reach.Of(practice);
        var blocked = practice.Clients.Where(c => findings.Block(c.Id, reach)).Select(c => c.Id.Text);
        Assert.Equal(
            practice
                .Clients.Where(c => Planned.Uses(practice, c).Any(u => u.Exercise.Id.Text == "heel-sink"))
                .Select(c => c.Id.Text),
            blocked
        );
        Assert.NotEmpty(blocked);
    }

    [Theory]
    [InlineData("cautions/calf-stretch.md", "A clip can stand only in the text of an exercise.")]
    [InlineData("practice.md", "A clip can stand only in the text of an exercise.")]
    public void A_clip_shows_how_to_move_so_it_stands_behind_cautions_only(string path, string message)
    {
        var golden = Golden();
        if (golden.Files.All(f => f.Key != path))
            path = golden
                .Files.First(f => f.Key.StartsWith("cautions/", StringComparison.Ordinal) && f.Key.Count(c => c == '.') == 1)
                .Key;
        var way = path.Contains('/', StringComparison.Ordinal) ? "../exercises/sink.webm" : "exercises/sink.webm";
        Assert.Contains(golden.With(path, golden[path] + $"\n![The heel sinks]({way})\n").Findings(), f =>
            f.Rule.Text == "address-refused" && f.Message == message
        );
    }

    [Theory]
    [InlineData("sink.mov", "clip-missing")]
    [InlineData("none.webm", "clip-missing")]
    [InlineData("../../sink.webm", "address-refused")]
    [InlineData("https://example.org/sink.webm", "address-refused")]
    public void Another_address_is_refused(string address, string rule) =>
        Assert.Contains(
            Golden()
                .With("exercises/sink.mov", MediaFileTests.Bytes("silent.mp4"))
                .Edit(File, "(sink.webm)", $"({address})")
                .Findings(),
            f => f.Rule.Text == rule
        );

    [Fact]
    public void A_damaged_still_or_clip_is_said_for_every_text_that_shows_it()
    {
        var golden = Golden()
            .With("exercises/sink.webm", MediaFileTests.Bytes("sounding.webm")[..300])
            .Edit(File, "(sink.webm)", "(sink.webm)\n\n![Again](sink.webm)");
        Assert.Equal(
            2,
            golden
                .Findings()
                .Count(f =>
                    f.Rule.Text == "clip-missing"
                    && f.Message.StartsWith("'exercises/sink.webm' is cut off or damaged at byte ", StringComparison.Ordinal)
                )
        );
    }

    internal static LittlePractice Golden(string captions = Captions) =>
        LittlePractice
            .Golden.Edit(File, "Let the heel sink.", "Let the heel sink. ![The heel sinks](sink.webm)")
            .With("exercises/sink.webm", MediaFileTests.Bytes("sounding.webm"))
            .With("exercises/sink.jpg", MediaFileTests.Bytes("upright.jpg"))
            .With("exercises/sink.en.vtt", captions);
}
