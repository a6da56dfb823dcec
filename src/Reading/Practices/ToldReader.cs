using System.Globalization;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a client says of birth and health. It stands in <c>client.yaml</c>, or in <c>answers.yaml</c> beside it, which
/// an intake sheet saves; what stands in one may be missing in the other.</summary>
internal static class ToldReader
{
    /// <param name="client">The client's own file.</param>
    /// <param name="told">The sheet of answers; null where there is none.</param>
    /// <returns>Null for what is missing or cannot be read, which a finding says.</returns>
    public static (Birth? Born, DateOnly? Answered, Series<Answer>? Answers) Read(Fields client, SourceFile? told, KnownIds known)
    {
        if (told is null)
            return (BirthIn(client, needed: true), client.NeedDate("answered"), AnswersReader.In(client, known)).Checked(client);
        if (Fields.Of(told, YamlReader.Read(told, told.Text, 1), "answers") is not { } sheet)
        {
            // What is wrong with the sheet was said; the client's own keys are none the less known.
            foreach (var key in new[] { "born", "answered", "answers" })
                client.Take(key);
            return (null, null, null);
        }

        var born = Same(client, BirthIn(client, needed: !sheet.Has("born")), BirthIn(sheet, needed: false));
        DateOnly?[] days = [sheet.NeedDate("answered"), client.Date("answered")];
        var (first, second) = (AnswersReader.In(sheet, known), client.Has("answers") ? AnswersReader.In(client, known) : []);
        sheet.Done();
        foreach (var twice in (second ?? []).Where(a => (first ?? []).Any(f => f.Condition == a.Condition)))
        {
            client.SourceFile.Fault(
                Faults.KeyUnknown,
                twice.At,
                $"{Quote.Of(twice.Condition.Text)} is answered twice: here, and in {told.Path}.",
                $"Keep the newer of the two; what the client filled in stands in {AnswersFile.Name}."
            );
        }

        // What the sheet leaves open is open, whatever was written before; of two days the earlier one: no answer is taken to be
        // newer than it is.
        var open = OpenIn(sheet);
        second = second?.Where(a => !open.Contains(a.Condition.Text)).ToSeries();
        return (
            born,
            days.Min(),
            first is null || second is null ? null : first.Concat(second).DistinctBy(a => a.Condition).ToSeries()
        ).Checked(client);
    }

    private static (Birth? Born, DateOnly? Answered, Series<Answer>? Answers) Checked(
        this (Birth? Born, DateOnly? Answered, Series<Answer>? Answers) told,
        Fields client
    )
    {
        if (told is not ({ } born, { } answered, _) || (born.Date ?? new DateOnly(born.Year, 1, 1)) <= answered)
            return told;
        client.SourceFile.Fault(
            Faults.ValueWrong,
            BornAt(client),
            $"Somebody born in {born.Year} cannot have answered on {answered.Iso()}.",
            "Correct 'born' or 'answered'."
        );
        return told with { Born = null };
    }

    private static HashSet<string> OpenIn(Fields sheet) =>
        (sheet.Take("answers") as YamlNode.Map)
            ?.Entries.Where(e => e.Value is YamlNode.Text { Value: "not asked" })
            .Select(e => e.Key)
            .ToHashSet(StringComparer.Ordinal)
        ?? [];

    private static Birth? Same(Fields client, Birth? own, Birth? told)
    {
        if (own is { } year && told is { Date: not null } && year.Date is null && year.Year == told.Year)
            return told;
        if (own is not null && told is not null && own != told)
            client.SourceFile.Fault(
                Faults.ValueWrong,
                BornAt(client),
                $"'born' is one thing here and another in {AnswersFile.Name}.",
                "Correct one of them, or take it out here."
            );
        return own ?? told;
    }

    private static Location BornAt(Fields client) => client.Take("born")?.At ?? client.At;

    private static Birth? BirthIn(Fields fields, bool needed)
    {
        if ((needed ? fields.NeedMention("born") : fields.Mention("born")) is not { } born)
            return null;
        fields.SourceFile.Note(born, new ValueKind.Whole(Values.FirstYear, Values.LastYear));
        fields.SourceFile.Note(born, ValueKind.Day);
        if (
            born.Value.Length == 4
            && int.TryParse(born.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var year)
            && Values.IsYear(year)
        )
            return new(year, null);
        if (Values.DayOf(born.Value) is { } date)
            return new(date.Year, date);
        Values.SayNoDate(
            fields.SourceFile,
            born.Value,
            born.At,
            $"{Quote.Of(born.Value)} is no year or date of birth.",
            "Write the year, as 1979, or the date, as 1979-03-21."
        );
        return null;
    }
}
