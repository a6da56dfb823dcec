using Gradus.Domain;

namespace Gradus.Reading;

internal static class ConditionReader
{
    private const string Floor = "floor.yaml";

    /// <summary>The questions that everybody is asked, in the order of the floor, then the practice's own. An entry of the
    /// practice with the id of one that everybody is asked gives it other words; where it is, and whether it has sides,
    /// stays.</summary>
    /// <param name="own">The practice's sheet; null where it cannot be read.</param>
    /// <param name="words">In the practice's language.</param>
    public static AskedConditions Read(SourceFile? own, Words words, Findings findings)
    {
        var floorRead = List(Embedded.SourceFile(Floor, findings), words);
        var floor = floorRead.Bound;
        var written = own is null ? AskedConditions.Unread : WithoutFormer(own, List(own, null), floorRead.Former);
        var reworded = written.Bound.ToDictionary(c => c.Id);
        var asked = floor
            .Select(c => own is not null && reworded.TryGetValue(c.Id, out var other) ? Reworded(own, c, other) : c)
            .ToArray();
        var (ids, unsided) = (asked.Select(c => c.Id.Text), asked.Where(c => !c.IsSided).Select(c => c.Id.Text));
        return new(
            asked.Concat(written.Bound.Where(c => floor.All(f => f.Id != c.Id))).ToSeries(),
            written.Ids is null ? null : written.Ids.Concat(ids).ToHashSet(StringComparer.Ordinal),
            written.Unsided.Concat(unsided).ToHashSet(StringComparer.Ordinal),
            floorRead.Former
        );
    }

    /// <summary>A question of the practice's own under an id of before would be asked beside those that took its place, and
    /// decide nothing.</summary>
    private static AskedConditions WithoutFormer(SourceFile sheet, AskedConditions written, FormerConditions former)
    {
        foreach (var old in written.Bound.Where(c => former.Has(c.Id.Text)))
            sheet.Fault(
                Faults.ConditionUnknown,
                old.At,
                former.Message(old.Id.Text),
                $"Take this entry out. To ask in your own words, write an entry for each: {former.Instead(old.Id.Text)}."
            );
        return written with
        {
            Bound = written.Bound.Where(c => !former.Has(c.Id.Text)).ToSeries(),
            Ids = written.Ids?.Where(id => !former.Has(id)).ToHashSet(StringComparer.Ordinal),
        };
    }

    private static Condition Reworded(SourceFile sheet, Condition always, Condition words)
    {
        if (words.Where != always.Where || words.IsSided != always.IsSided)
        {
            sheet.Fault(
                Faults.ValueWrong,
                words.At,
                $"{Quote.Of(always.Id.Text)} is asked of everybody, for the "
                    + $"{always.Where}{(always.IsSided ? ", on each side" : ", without sides")}; here it is asked otherwise.",
                $"Write where: {always.Where}{(always.IsSided ? " and sided: yes" : " and no sided")}, or ask your "
                    + "narrower question under an id of its own."
            );
        }

        return always with
        {
            Name = words.Name,
            Question = words.Question,
            At = words.At,
            IsSaidByGradus = false,
            NotWithFor = words.NotWithFor,
            ClearFirstFor = words.ClearFirstFor,
        };
    }

    /// <param name="floor">The words of what everybody is asked; null where the sheet has words of its own.</param>
    private static AskedConditions List(SourceFile sheet, Words? floor)
    {
        var node = YamlReader.Read(sheet, sheet.Text, 1);
        if (node is not (null or YamlNode.Listing))
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"This file is a list of conditions, but here is {node.Kind}.",
                "Begin each condition on its own line with a hyphen."
            );
        if (node is not YamlNode.Listing list)
            return AskedConditions.Unread;
        var conditions = new List<Condition>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var unsided = new HashSet<string>(StringComparer.Ordinal);
        var former = new List<(string Was, string Is)>();
        foreach (var item in list.Items)
        {
            if (Fields.Of(sheet, item, "a condition") is not { } fields)
                continue;
            var id = IdIn(fields, ids);
            var name = floor is null ? fields.NeedText("name") : floor.Say($"condition-{id}");
            var question = floor is null ? fields.NeedText("question") : floor.Say($"question-{id}");
            var place = fields.NeedMention("where");
            var where = ExerciseWords.RegionOf(sheet, place);
            var sided = fields.Flag("sided");
            if (sided && where is { IsSided: false } && place is not null)
                sheet.Fault(
                    Faults.ValueWrong,
                    place.At,
                    $"{Quote.Of(where.Name)} has no left and right.",
                    "Take 'sided' out, or name a limb's region in 'where'.",
                    place.Value.Length
                );
            var basis = floor is null ? null : BasisIn(fields);
            var (notWith, clearFirst) = floor is null
                ? (TraitsReader.In(fields, "not-with-for"), TraitsReader.In(fields, "clear-first-for"))
                : (null, null);
            if (floor is not null)
                former.AddRange(fields.Texts("was").Select(was => (was.Value, id?.Text ?? "")));
            fields.Done();
            if (id is not null && !sided)
                unsided.Add(id.Text);
            if (id is not null && name is not null && question is not null && where is not null)
                conditions.Add(
                    new(id, name, question, where, sided, floor is null ? fields.At : Location.Whole(Condition.File), basis)
                    {
                        IsSaidByGradus = floor is not null,
                        NotWithFor = notWith,
                        ClearFirstFor = clearFirst,
                    }
                );
        }

        return new(conditions.ToSeries(), ids, unsided, new(former.ToLookup(f => f.Was, f => f.Is, StringComparer.Ordinal)));
    }

    private static Basis? BasisIn(Fields fields)
    {
        var (because, source, mark) = (fields.NeedText("because"), fields.NeedText("source"), fields.NeedText("mark"));
        var mattersFor = fields
            .Texts("matters-for")
            .Select(p => ExerciseWords.PropertyOf(fields.SourceFile, p, ExerciseWords.Whats))
            .OfType<string>()
            .ToSeries();
        var isOfNow = fields.Flag("of-now");
        return because is null || source is null || mark is null ? null : new(because, source, mark, mattersFor, isOfNow);
    }

    private static ConditionId? IdIn(Fields fields, HashSet<string> before)
    {
        if (fields.NeedMention("id") is not { } id)
            return null;
        fields.SourceFile.Note(id, IdShape.Kind);
        if (!Id.IsValid(id.Value))
        {
            before.Add(id.Value.ToLowerInvariant());
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                id.At,
                $"{Quote.Of(id.Value)} cannot be an id.",
                "Use small letters, digits and hyphens, a letter first; no device name, as con or nul.",
                id.Value.Length
            );
            return null;
        }

        if (before.Add(id.Value))
            return new(id.Value);
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            id.At,
            $"There are two conditions {Quote.Of(id.Value)}.",
            "Give one of them another id, or take it out.",
            id.Value.Length
        );
        return null;
    }
}

/// <summary>What may be asked.</summary>
/// <param name="Ids">Every id there is, in small letters, whether or not its condition could be bound; null where the file could
/// not be read, which is said once, at the file.</param>
/// <param name="Unsided">The ids of conditions that have no left and right.</param>
internal sealed record AskedConditions(
    Series<Condition> Bound,
    IReadOnlySet<string>? Ids,
    IReadOnlySet<string> Unsided,
    FormerConditions Former
)
{
    public static readonly AskedConditions Unread = new([], null, new HashSet<string>(), FormerConditions.None);
}
