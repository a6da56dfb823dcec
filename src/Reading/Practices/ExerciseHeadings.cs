using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Headings of an exercise's text that are nearly one of those that have a meaning: what stands below would silently be
/// shown in another place.</summary>
internal static class ExerciseHeadings
{
    public const string SetUp = "Set up";
    public const string Do = "Do";

    private const string Cautions = "cautions";
    private const string Dose = "dose";

    /// <summary>What coaches call the same parts, in small letters. One that means a part which the text already has is
    /// free.</summary>
    private static readonly Dictionary<string, string> OtherNames = new[]
    {
        (
            SetUp,
            "setting up|setup position|set up position|start position|starting position|start|position|getting ready|get ready"
        ),
        (SetUp, "how to set up|preparation|getting into position|aufbau|ausgangsstellung|ausgangsposition|startposition"),
        (SetUp, "vorbereitung|einrichten|so fängst du an"),
        (Do, "how to do it|how to do this|how to|do it|do this|doing it|what to do|how|instructions|instruction|steps|the steps"),
        (Do, "step by step|movement|the movement|the exercise|exercise|execution|action|technique|method|perform|performing it"),
        (Do, "ausführung|durchführung|anleitung|so gehts|so geht es|übung|die übung|bewegung|schritte|was du tust|mach"),
        (
            Cautions,
            "cautions|caution|warnings|warning|precautions|precaution|contraindications|contraindication|safety|red flags"
        ),
        (Cautions, "signs|stop signs|stop if|when to stop|danger signs|do not do this if|not with|who should not do this"),
        (Cautions, "vorsicht|warnung|warnungen|warnzeichen|kontraindikationen|gegenanzeigen|sicherheit|achtung|abbruch"),
        (Dose, "dose|dosage|doses|sets and reps|sets reps|reps and sets|sets|reps|dosis|dosierung|umfang"),
    }
        .SelectMany(names => names.Item2.Split('|').Select(name => (name, meant: names.Item1)))
        .ToDictionary(names => names.name, names => names.meant, StringComparer.Ordinal);

    public static void Find(SourceFile sheet, Prose text)
    {
        var there = text.Blocks.OfType<Block.Heading>().Where(h => h.Level == 2).Select(h => Prose.PlainOf(h.Text)).ToHashSet();
        foreach (var block in text.Blocks)
        {
            if (block is Block.Heading { Level: 2 } known && Prose.PlainOf(known.Text) is SetUp or Do)
                continue;
            if (Written(block) is not { } written || Meant(written, there) is not { } meant)
                continue;
            var at = block is Block.Heading heading ? heading.At : (block as Block.Paragraph)?.At ?? sheet.Whole;
            var length = sheet.Line(at.Line).Length;
            if (meant is SetUp or Do)
                sheet.Fault(
                    Faults.HeadingMistaken,
                    at,
                    $"{Quote.Of(written)} is nearly a heading that has a meaning; what stands below would be shown apart.",
                    $"Did you mean '## {meant}'?",
                    length
                );
            else
                sheet.Fault(
                    Faults.HeadingMistaken,
                    at,
                    $"{Quote.Of(written)} begins a part of the text that Gradus would not know as {meant}.",
                    meant == Dose
                        ? "Write the dose in the header, under 'dose'; pages and sessions say it from there."
                        : "Write each caution as a file in cautions, and name it in the header under 'signs'; conditions "
                            + "under 'not-with'.",
                    length
                );
        }
    }

    /// <summary>What a block says, where it is a heading or a short line that stands for one.</summary>
    private static string? Written(Block block) =>
        block switch
        {
            Block.Heading heading => Prose.PlainOf(heading.Text),
            Block.Paragraph { Text: [Inline.Emphasis alone] } => Prose.PlainOf(alone.Text),
            Block.Paragraph { Text: [Inline.Emphasis alone, Inline.Plain { Words: ":" }] } => Prose.PlainOf(alone.Text),
            Block.Paragraph { Text: [Inline.Plain alone] } when alone.Words.EndsWith(':') => alone.Words,
            _ => null,
        };

    /// <summary>A wrong spelling or level is always said; another name only where the part that it means is not there.</summary>
    private static string? Meant(string written, HashSet<string> there)
    {
        var letters = written.Where(c => c is not ('\'' or '’')).Select(c => char.IsLetter(c) ? char.ToLowerInvariant(c) : ' ');
        var words = string.Concat(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Concat(words);
        if (Nearest.To(joined, ["setup"]) is not null)
            return SetUp;
        if (joined is "do" or "stepdo")
            return Do;
        var meant = words is ["set", "up", ..] ? SetUp : OtherNames.GetValueOrDefault(string.Join(' ', words));
        return meant is null || there.Contains(meant) ? null : meant;
    }
}
