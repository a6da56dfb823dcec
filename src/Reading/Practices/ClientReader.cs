using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>client.yaml</c> → a client, but for the programme.</summary>
internal static class ClientReader
{
    private static readonly (string, Side)[] Stances = [("right", Side.Right), ("left", Side.Left)];

    /// <param name="told">What the client filled in on an intake sheet; null where there is no such file.</param>
    public static Client? Read(
        SourceFile sheet,
        SourceFile? told,
        ClientId id,
        KnownIds known,
        Programme? programme,
        Series<RangeReading> readings,
        WordBook words
    )
    {
        if (Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a client") is not { } fields)
            return null;
        var name = fields.NeedText("name");
        var sports = SportsIn(fields, known);
        var country = Country.In(fields, known.Countries);
        var language = LanguageReader.In(fields, words);
        var zone = ZoneReader.In(fields);
        var days = WeekdayWords.Of(sheet, fields.NeedTexts("days"));
        var hour = HourReader.Read(fields);
        var minutes = fields.NeedWhole("minutes", 1, Client.MostMinutes);
        var equipment = fields.Texts("equipment").Select(e => e.Value).ToSeries();
        var agreed = AgreementIn(fields);
        var (born, answered, answers) = ToldReader.Read(fields, told, known);
        var clearances = fields
            .Groups("clearances", "a clearance")
            .Select(f => ClearanceReader.In(f, known))
            .OfType<Clearance>()
            .ToSeries();
        var restrictions = fields.Groups("restrictions", "a restriction").Select(f => RestrictionReader.In(f, known)).ToArray();
        var stopped = StoppedIn(fields);
        fields.Done();
        if (
            name is null
            || sports.Count == 0
            || born is null
            || country is null
            || language is null
            || zone is null
            || minutes is null
            || agreed is null
            || answered is null
            || answers is null
            || programme is null
            || restrictions.Contains(null)
        )
            return null;
        return new(
            id,
            name,
            sports,
            born,
            country,
            language.Value,
            zone,
            days,
            hour,
            minutes.Value,
            equipment,
            agreed,
            answered.Value,
            answers,
            clearances,
            restrictions.OfType<Restriction>().ToSeries(),
            programme,
            readings,
            sheet.Whole
        )
        {
            Stopped = stopped,
        };
    }

    private static Stopped? StoppedIn(Fields fields)
    {
        if (fields.Group("stopped", "stopped") is not { } group)
            return null;
        var (on, because) = (group.NeedDate("on"), group.Text("because") ?? "");
        group.Done();
        return on is null ? null : new(on.Value, because);
    }

    /// <summary>One sport with its stance, or several under <c>sports</c>.</summary>
    private static Series<SportStance> SportsIn(Fields fields, KnownIds known)
    {
        if (!fields.Has("sports"))
        {
            var sport = known.SportOf(fields.SourceFile, fields.NeedMention("sport"));
            var stance = fields.NeedChoice("stance", Stances);
            fields.Take("sports");
            return sport is null || stance is null ? [] : [new(sport, stance.Value)];
        }

        foreach (var beside in fields.Entries.Where(e => e.Key is "sport" or "stance"))
        {
            fields.Take(beside.Key);
            fields.SourceFile.Fault(
                Faults.KeyUnknown,
                beside.KeyAt,
                $"'{beside.Key}' stands beside 'sports', which says it for each sport.",
                "Take it out, or take 'sports' out.",
                beside.Key.Length
            );
        }

        if (fields.NeedGroup("sports", "sports") is not { } group)
            return [];
        if (!group.Entries.Any())
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                group.At,
                "No sport stands here.",
                "Write each sport with its stance, as { epee: left }, or 'sport' and 'stance' instead."
            );
        var sports = new List<SportStance>();
        foreach (var entry in group.OwnEntries)
        {
            var sport = known.SportOf(fields.SourceFile, new(entry.Key, entry.KeyAt));
            if (Values.Choice(fields.SourceFile, entry.Key, entry.Value, Stances) is { } stance && sport is not null)
                sports.Add(new(sport, stance));
        }

        return sports.ToSeries();
    }

    private static Agreement? AgreementIn(Fields fields)
    {
        if (fields.NeedGroup("agreed", "agreed") is not { } agreed)
            return null;
        var training = agreed.NeedDate("training");
        var guardian = agreed.Date("guardian");
        agreed.Done();
        return training is null ? null : new(training.Value, guardian);
    }
}
