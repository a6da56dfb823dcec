using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The items under <c>do</c>: uses of exercises, and rounds of uses.</summary>
/// <param name="weeks">How many weeks the programme has.</param>
internal sealed class UseReader(int weeks, KnownIds known, DoseSettings settings)
{
    private static readonly (string, ExerciseVersion)[] Versions =
    [
        ("easier", ExerciseVersion.Easier),
        ("harder", ExerciseVersion.Harder),
    ];

    public Series<ProgrammeUse> Read(Fields session) =>
        session
            .Groups("do", "a use of an exercise", needed: true)
            .SelectMany(item => item.Has("rounds") ? Round(item) : One(item, null))
            .ToSeries();

    private List<ProgrammeUse> Round(Fields fields)
    {
        var times = fields.NeedWhole("rounds", 1, 100);
        var rest = fields.Span("rest", 0);
        var change = fields.Span("change", 0);
        var rounds = new Rounds(times ?? 1, rest, change, fields.At);
        var uses = fields.Groups("of", "a use of an exercise", needed: true).SelectMany(item => One(item, rounds)).ToList();
        fields.Done();
        return uses;
    }

    /// <summary>What somebody does beside, or in place of, what a shared programme says.</summary>
    /// <param name="key">What names the exercise.</param>
    public ProgrammeUse? Other(Fields fields, string key) => One(fields, null, key).FirstOrDefault();

    /// <summary>Another side and another dose for something; the rest of the group is taken by whoever asks.</summary>
    public (Mention<SideTerm>? Side, UseWeeks? Weeks) Change(Fields fields) =>
        (SideOf(fields), WeeksIn(fields) is { } weeks and not { Lines.Count: 0, Versions.Count: 0 } ? weeks : null);

    private IEnumerable<ProgrammeUse> One(Fields fields, Rounds? rounds, string key = "use")
    {
        var exercise = known.ExerciseOf(fields.SourceFile, fields.NeedMention(key));
        var name = fields.Mention("as");
        var side = SideOf(fields);
        var (lines, versions) = WeeksIn(fields) ?? UseWeeks.None;
        var from = fields.Whole("from-week", 1, weeks, ProgrammeReader.WeeksLimit);
        var until = fields.Whole("until-week", 1, weeks, ProgrammeReader.WeeksLimit);
        if (from > until)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                fields.Take("until-week")?.At ?? fields.At,
                $"This ends with week {until}, before it begins in week {from}.",
                "Correct 'from-week' or 'until-week'."
            );
        var moveOn = fields.Texts("move-on").Select(m => m.Value).ToSeries();
        var keep = fields.Flag("keep-when-short");
        fields.Done();
        if (exercise is null || from > until)
            return [];
        var use = new ProgrammeUse(exercise, side, lines, from, until, versions, rounds, moveOn, keep);
        return [name is null ? use : use with { Name = name.Value }];
    }

    private static Mention<SideTerm>? SideOf(Fields fields)
    {
        if (fields.Mention("side") is not { } named)
            return null;
        var sheet = fields.SourceFile;
        var name = Spacing.Collapse(named.Value).ToLowerInvariant();
        if (name.Length > 0 && !name.Contains(',', StringComparison.Ordinal) && Characters.CanBeShown(name))
            return new(SideTerm.Of(name), named.At);
        sheet.Fault(
            Faults.ValueWrong,
            named.At,
            $"{Quote.Of(named.Value)} cannot be a side.",
            "Write one: left, right, a role of the client's sport, each side, alternate sides or both sides.",
            named.Value.Length
        );
        return null;
    }

    private UseWeeks? WeeksIn(Fields fields)
    {
        if (fields.Group("by-week", "by-week") is not { } byWeek)
            return null;
        var lines = new List<WeekLine>();
        var versions = new List<WeekVersion>();
        foreach (var entry in byWeek.OwnEntries)
        {
            var week = Values.Whole(byWeek.SourceFile, "by-week", entry.Name, 1, weeks, ProgrammeReader.WeeksLimit);
            if (
                entry.Value is YamlNode.Map map
                && Fields.Of(byWeek.SourceFile, map, "a week") is { } version
                && version.Has("use")
            )
            {
                if (version.NeedChoice("use", Versions) is { } which && week is not null)
                    versions.Add(new(week.Value, which, entry.KeyAt));
                version.Done();
                continue;
            }

            var dose = DoseReader.Read(byWeek.SourceFile, entry.Key, entry.Value, settings);
            if (dose?.Dose is { IsSettled: false })
                byWeek.SourceFile.Fault(
                    Faults.ValueWrong,
                    dose.At,
                    "The dose of a week has single numbers, but here is a range.",
                    "Write the one number for that week; ranges belong to the exercise.",
                    dose.Line.Length
                );
            else if (week is not null && dose is not null)
                lines.Add(new(week.Value, dose));
        }

        return new(lines.OrderBy(l => l.Week).ToSeries(), versions.OrderBy(v => v.Week).ToSeries());
    }
}
