using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What a change in a file makes other on the pages, beside sessions, exercises and signs.</summary>
public sealed class EditionPartsTests
{
    private const string Card = "practice.md";
    private const string Client = "clients/ansel/client.yaml";
    private const string Answers = "clients/ansel/answers.yaml";
    private const string Programme = "clients/ansel/programme.md";
    private const string Sport = "sports/epee.yaml";
    private const string Readings = "clients/ansel/readings.csv";
    private const string Head = "date,motion,side,mode,value,unit,instrument,trials,after\n";

    private static readonly LittlePractice Golden = LittlePractice
        .Golden.With(Readings, Head + "2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer,3,rest\n")
        .With("glossary.yaml", "end range: As far as a joint goes.\n");

    private static readonly EditionContent Before = Of(Golden);

    [Fact]
    public void Each_part_is_there_once_and_has_a_sentence()
    {
        Assert.Equal(EditionParts.Names.Select(n => n.Name), Before.Others.Select(o => o.Name));
        Assert.Equal(
            ["letter", "contact", "client", "time", "health", "sport", "rules", "move-on", "retest", "readings", "glossary"],
            Before.Others.Select(o => o.Name)
        );
        Assert.All(Before.Others, o => Assert.Matches("^[0-9a-f]{16}$", o.Words));
    }

    [Theory]
    [InlineData(Programme, "slow.", "calm.", "letter")]
    [InlineData(Programme, "(../../exercises/calf-sway.md)", "(../../exercises/heel-sink.md)", "letter")]
    [InlineData(Programme, "weeks: 6\n", "weeks: 6\nmove-on:\n  gain: [pain at most 2, two weeks running]\n", "move-on")]
    [InlineData(Programme, "weeks: 6\n", "weeks: 6\nretest: 2027-01-20\n", "retest")]
    [InlineData(Card, "name: Sluice Lane épée club", "name: Sluice Lane club", "contact")]
    [InlineData(Card, "coach: Hesper Quill", "coach: Hesper Quince", "contact")]
    [InlineData(Card, "hesper@example.org", "coach@example.org", "contact")]
    [InlineData(Card, "960077", "960078", "contact")]
    [InlineData(Card, "IE: { call: \"112\"", "IE: { call: \"113\"", "contact")]
    [InlineData(Card, "IE: { call: \"112\"", "IE: { unsure: \"116\", call: \"112\"", "contact")]
    [InlineData(Card, "999 works as well.", "999 works too.", "contact")]
    [InlineData(Card, "GB: { call: \"999\"", "GB: { call: \"998\"", "")]
    [InlineData(Card, "do not replace advice", "never replace advice", "contact")]
    [InlineData(Card, "  breath: 8 s", "  stop-above: 4\n  breath: 8 s", "rules")]
    [InlineData(Card, "  breath: 8 s", "  ease-off-above: 1\n  breath: 8 s", "rules")]
    [InlineData(Card, "  breath: 8 s", "  days-back-one-week: 6\n  breath: 8 s", "rules")]
    [InlineData(Card, "  breath: 8 s", "  days-back-to-first: 13\n  breath: 8 s", "rules")]
    [InlineData(Client, "name: Ansel Wherry", "name: Ansel Quay", "client")]
    [InlineData(Client, "07:05", "07:06", "time")]
    [InlineData(Client, "07:05", "08:05", "time")]
    [InlineData(Client, "minutes: 35", "minutes: 36", "time")]
    [InlineData(Client, "Europe/Dublin", "Europe/London", "time")]
    [InlineData(Client, "training: 2026-11-02", "training: 2026-11-01", "health")]
    [InlineData(Client, "guardian: 2026-11-03", "guardian: 2026-11-04", "health")]
    [InlineData(Client, ", guardian: 2026-11-03", "", "health")]
    [InlineData(Client, "faint-spells: yes", "faint-spells: no", "health")]
    [InlineData(Client, "calf-strain: no", "calf-strain: yes, left", "health")]
    [InlineData(Answers, "hernia: no", "hernia: yes", "health")]
    [InlineData(Answers, "[2 left wrist, 1 neck]", "[3 left wrist, 1 neck]", "health")]
    [InlineData(Answers, "[2 left wrist, 1 neck]", "0", "health")]
    [InlineData(Client, "stance: left", "stance: right", "sport")]
    [InlineData(Sport, "name: Épée", "name: Fencing", "sport")]
    [InlineData(Sport, "Which hand holds", "Which hand has", "sport")]
    [InlineData(Sport, "free arm: left", "free arm: right", "sport")]
    [InlineData("glossary.yaml", "end range:", "end of range:", "glossary")]
    [InlineData("glossary.yaml", "As far as", "So far as", "glossary")]
    public void What_is_written_otherwise_is_found_in_its_part(string file, string before, string after, string part) =>
        Assert.Equal(part, Others(Golden.Edit(file, before, after)));

    [Theory]
    [InlineData("2026-11-21,lying ankle dorsiflexion,left,passive,9,deg,inclinometer,3,rest")]
    [InlineData("2026-11-20,lunge ankle dorsiflexion,left,passive,9,deg,inclinometer,3,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,right,passive,9,deg,inclinometer,3,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,left,active,9,deg,inclinometer,3,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,left,passive,10,deg,inclinometer,3,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,goniometer,3,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer,2,rest")]
    [InlineData("2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer,3,training")]
    public void Every_cell_of_a_reading_counts(string row) =>
        Assert.Equal("readings", Others(Golden.With(Readings, $"{Head}{row}\n")));

    private static string Others(LittlePractice practice) =>
        string.Join(
            ' ',
            Before.Others.Zip(Of(practice).Others).Where(o => o.First.Words != o.Second.Words).Select(o => o.First.Name)
        );

    private static EditionContent Of(LittlePractice practice) => MadeProgramme.Content(practice.Read());
}
