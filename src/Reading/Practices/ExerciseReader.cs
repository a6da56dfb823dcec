using Gradus.Domain;

namespace Gradus.Reading;

internal static class ExerciseReader
{
    public static Exercise? Read(SourceFile sheet, ExerciseId id, KnownIds known, DoseSettings settings)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "an exercise") is not { } fields)
            return null;
        var title = fields.NeedText("title");
        var trains = known.MotionOf(sheet, fields.NeedMention("trains"));
        var stage = fields.NeedChoice("stage", ExerciseWords.Stages);
        var position = fields.NeedChoice("position", ExerciseWords.Positions);
        var cue = CueIn(fields, trains, position);
        var measure = MeasureIn(fields);
        var equipment = fields.Texts("equipment");
        var written = ExerciseWords.LoadsOf(sheet, fields.Texts("loads"));
        var dose = DoseReader.Read(sheet, "dose", fields.Need("dose"), settings);
        var needs = NeedsIn(fields, known);
        var signs = known.CautionsOf(sheet, fields.NeedTexts("signs"));
        var notWith = Forbidding(sheet, known.ConditionsOf(sheet, fields.NeedTexts("not-with")));
        var clearFirst = Forbidding(sheet, known.ConditionsOf(sheet, fields.Texts("clear-first")));
        var easier = known.ExerciseOf(sheet, fields.Mention("easier"));
        var harder = known.ExerciseOf(sheet, fields.Mention("harder"));
        var properties = fields
            .Texts("properties")
            .Select(p => ExerciseWords.PropertyOf(sheet, p, ExerciseWords.Properties))
            .OfType<string>()
            .ToSeries();
        var (start, end) = (PairReader.Picture(fields, "start", known), PairReader.Picture(fields, "end", known));
        var pose = PoseKeyReader.Read(fields, cue);
        fields.Done();
        var text = TextOf(sheet, headed, known) with { Start = start, End = end };
        if (title is null || trains is null || stage is null || position is null || dose is null)
            return null;
        return new(
            new(
                id,
                trains,
                stage.Value,
                position.Value,
                equipment.Select(e => e.Value).ToSeries(),
                PositionLoads.Of(position.Value, written, properties, dose.Dose),
                properties
            ),
            title,
            dose,
            signs,
            notWith,
            clearFirst,
            needs,
            easier,
            harder,
            text,
            sheet.Whole
        )
        {
            Cue = cue,
            Measure = measure,
            Pose = pose,
        };
    }

    /// <summary>One measure alone: of others it is not known what a client's own reading says.</summary>
    private static Mention<string>? MeasureIn(Fields fields)
    {
        if (fields.Mention("measure") is not { } written)
            return null;
        fields.SourceFile.Note(written, ValueKind.Of([HomeTest.Offered]));
        if (written.Value == HomeTest.Offered)
            return written;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(written.Value)} is nothing that a client measures alone.",
            $"Write 'measure: {HomeTest.Offered}', or take it out and measure it yourself.",
            written.Value.Length
        );
        return null;
    }

    /// <summary>Only where one leg stands in front of the other or kneels beside it.</summary>
    private static SideCue? CueIn(Fields fields, Motion? trains, Position? position)
    {
        if (fields.Choice("cue", ExerciseWords.Cues) is not { } cue || fields.Mention("cue") is not { } written)
            return null;
        if (
            trains is null or { Limb: Limb.Leg, IsPaired: true }
            && position is null or Position.HalfKneeling or Position.SplitStance or Position.Standing
        )
            return cue;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            written.At,
            "'cue' says where the foot or knee of the working leg is, and here no leg stands in front of the other.",
            "Take 'cue' out; it may stand with the position half-kneeling, split-stance or standing, where a leg is trained.",
            written.Value.Length
        );
        return null;
    }

    private static Series<Mention<ConditionId>> Forbidding(SourceFile sheet, Series<Mention<ConditionId>> named)
    {
        foreach (var wrong in named.Where(n => !AlwaysAsked.MayForbid(n.Value)))
        {
            sheet.Fault(
                Faults.ValueWrong,
                wrong.At,
                $"{Quote.Of(wrong.Value.Text)} cannot be named by an exercise: everybody is asked it, and the answer is "
                    + "judged for every exercise.",
                "Take its name out here.",
                wrong.Value.Text.Length
            );
        }

        return named.Where(n => AlwaysAsked.MayForbid(n.Value)).ToSeries();
    }

    private static Series<NeededRange> NeedsIn(Fields fields, KnownIds known)
    {
        if (fields.Group("needs", "needs") is not { } needs)
            return [];
        foreach (var decimals in needs.Entries.Where(HoldsDecimals))
            needs.SourceFile.Fault(
                Faults.ValueWrong,
                decimals.KeyAt,
                $"The comma before {Quote.Of(decimals.Key)} begins a new key here.",
                "Write decimals with a point, as 2.5.",
                decimals.Key.Length
            );
        return needs
            .OwnEntries.Where(e => !HoldsDecimals(e))
            .Select(e =>
            {
                var (motion, mode) = MovedBy(e.Key);
                return (
                    Motion: known.MeasureOf(needs.SourceFile, new(motion, e.KeyAt))?.Motion,
                    Mode: mode,
                    Range: Values.Number(needs.SourceFile, e.Key, e.Value),
                    e.KeyAt
                );
            })
            .Where(n => n.Motion is not null && n.Range is not null && IsMeasured(needs.SourceFile, n.Motion, n.KeyAt))
            .Select(n => new NeededRange(n.Motion?.Name ?? "", n.Mode, n.Range ?? 0, n.KeyAt))
            .ToSeries();
    }

    /// <summary>"wrist extension passive": the motion, and who moves it where that is said.</summary>
    private static (string Motion, RangeMode? Mode) MovedBy(string key) =>
        key.EndsWith(" passive", StringComparison.Ordinal) ? (key[..^" passive".Length], RangeMode.Passive)
        : key.EndsWith(" active", StringComparison.Ordinal) ? (key[..^" active".Length], RangeMode.Active)
        : (key, null);

    private static bool IsMeasured(SourceFile sheet, Motion motion, Location at)
    {
        if (motion.Unit != MotionUnit.None)
            return true;
        sheet.Fault(
            Faults.ValueWrong,
            at,
            $"{Quote.Of(motion.Name)} is not measured: its unit is none.",
            "Take it out, or give the motion a unit in motions.yaml.",
            motion.Name.Length
        );
        return false;
    }

    /// <summary>Whether a key is what a comma cut off a number.</summary>
    private static bool HoldsDecimals(YamlEntry entry) => entry.Key.Length > 0 && entry.Key.All(char.IsAsciiDigit);

    /// <summary>The text below the header. Only the second-level headings "Set up" and "Do" have a meaning; what stands under any
    /// other stays together in order.</summary>
    public static ExerciseText TextOf(SourceFile sheet, Headed headed, KnownIds known)
    {
        var body = ProseReader.Read(
            sheet,
            headed.Body,
            headed.BodyLine,
            new(Placeholders: true, known.Exercises, known.Media) { Ranges = known }
        );
        var parts = new Dictionary<string, List<Block>>
        {
            ["why"] = [],
            [ExerciseHeadings.SetUp] = [],
            [ExerciseHeadings.Do] = [],
            ["more"] = [],
        };
        ExerciseHeadings.Find(sheet, body);
        var part = "why";
        foreach (var block in body.Blocks)
        {
            if (block is Block.Heading { Level: <= 2 } heading)
            {
                var name = string.Concat(new Prose([heading]).Lines());
                part = heading.Level == 2 && name is (ExerciseHeadings.SetUp or ExerciseHeadings.Do) ? name : "more";
                if (part != "more")
                    continue;
            }

            parts[part].Add(block);
        }

        foreach (var clip in Of("why").Inlines().OfType<Inline.Clip>())
            sheet.Fault(
                Faults.AddressRefused,
                clip.At,
                "A clip shows how something is done, and here no caution stands before it.",
                "Put it below '## Set up' or '## Do'."
            );
        return new(Of("why"), Of(ExerciseHeadings.SetUp), Of(ExerciseHeadings.Do), Of("more"));

        Prose Of(string name) => new(parts[name].ToSeries());
    }
}
