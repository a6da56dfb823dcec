namespace Gradus.Tests.Reading;

public sealed class AllMistakesTests
{
    [Fact]
    public void Five_mistakes_in_one_file_are_five_findings()
    {
        var practice = LittlePractice.Golden.With(
            "exercises/heel-sink.md",
            """
            ---
            title: Heel sink
            trains: ankle dorsiflexon
            stage: warm-up
            position: sitting
            dose: hold 20 s, each side
            signs: [calf-pul, sharp-stab]
            notwith: [calf-strain]
            ---
            ## Do
            Let it [sink](sink.html).
            """
        );
        Assert.Equal(
            [
                "exercises/heel-sink.md:3:9 id-unknown There is no motion 'ankle dorsiflexon' in this practice.",
                "exercises/heel-sink.md:4:8 value-wrong 'warm-up' is not a stage.",
                "exercises/heel-sink.md:7:9 id-unknown There is no caution 'calf-pul' in this practice.",
                "exercises/heel-sink.md:8:1 key-unknown 'notwith' is no key of an exercise.",
                "exercises/heel-sink.md:11:8 address-refused A link cannot lead to 'sink.html'.",
            ],
            practice.Findings().Select(f => $"{f.At} {f.Rule} {f.Message}")
        );
    }

    [Fact]
    public void A_mistake_in_every_file_is_found_in_one_run()
    {
        var practice = LittlePractice
            .Golden.Files.Where(f => f.Key != "conditions.yaml")
            .Aggregate(LittlePractice.Golden, (p, f) => p.With(f.Key, WithMotto(p[f.Key])));
        var said = practice
            .Findings()
            .Where(f => f.Message.StartsWith("'motto'", StringComparison.Ordinal))
            .Select(f => f.At.File);
        Assert.Equal(practice.Files.Select(f => f.Key).Where(path => path != "conditions.yaml"), said.Distinct());
    }

    private static string WithMotto(string text) =>
        text.StartsWith("---\n", StringComparison.Ordinal)
            ? "---\nmotto: never late\n" + text["---\n".Length..]
            : "motto: never late\n" + text;
}
