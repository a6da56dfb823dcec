using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

internal static partial class SessionReader
{
    [GeneratedRegex(@"^every ([1-9]|1[0-4]) days\z", RegexOptions.CultureInvariant)]
    private static partial Regex EveryDays();

    [GeneratedRegex(@"^([1-7]) a week(, a day between)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex TimesAWeek();

    private static readonly (string, AlternateKind)[] Kinds =
    [
        ("short", AlternateKind.Short),
        ("travel", AlternateKind.Travel),
        ("flare", AlternateKind.Flare),
    ];

    public static ProgrammeSession? Read(Fields fields, UseReader uses)
    {
        var name = fields.NeedText("name");
        var days = DaysIn(fields.SourceFile, "days", fields.Need("days"));
        var done = uses.Read(fields);
        fields.Done();
        return name is null || days is null ? null : new(name, days, done, null, null, fields.At);
    }

    /// <summary>A session that the client may do instead of one of those, on the same days.</summary>
    public static ProgrammeSession? ReadAlternate(Fields fields, UseReader uses, Series<ProgrammeSession> sessions)
    {
        var name = fields.NeedText("name");
        var insteadOf = fields.NeedMention("instead-of");
        var kind = fields.NeedChoice("kind", Kinds);
        var done = uses.Read(fields);
        fields.Done();
        var replaced = sessions.FirstOrDefault(s => s.Name == insteadOf?.Value);
        if (insteadOf is not null && replaced is null)
        {
            fields.SourceFile.Fault(
                Faults.IdUnknown,
                insteadOf.At,
                $"There is no session {Quote.Of(insteadOf.Value)} in this programme.",
                Nearest.Ask(
                    insteadOf.Value,
                    sessions.Select(s => s.Name),
                    "Write the name of the session that it stands in for."
                ),
                insteadOf.Value.Length
            );
        }

        return name is null || kind is null || replaced is null
            ? null
            : new(name, replaced.Days, done, insteadOf, kind, fields.At);
    }

    /// <param name="key">Under which they stand.</param>
    public static SessionDays? DaysIn(SourceFile sheet, string key, YamlNode? written)
    {
        if (written is YamlNode.Listing)
            return new SessionDays.On(WeekdayWords.Of(sheet, Values.Texts(sheet, key, written)));
        if (Values.Text(sheet, key, written) is not { } text)
            return null;
        foreach (
            var kind in (ValueKind[])
                [ValueKind.Of(["daily", "before play"]), ValueKind.Of(EveryDays()), ValueKind.Of(TimesAWeek())]
        )
            sheet.Note(written, kind);
        if (text.Value == "before play")
            return new SessionDays.BeforePlay();
        if (text.Value == "daily")
            return new SessionDays.EveryDays(1);
        if (EveryDays().Match(text.Value) is { Success: true } every)
            return new SessionDays.EveryDays(Number(every));
        if (TimesAWeek().Match(text.Value) is { Success: true } times)
            return new SessionDays.TimesAWeek(Number(times), times.Groups[2].Success);
        Values.Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} does not say when.",
            "Write days as [Mon, Thu], or one of: daily; every 2 days; 3 a week; 3 a week, a day between; before play."
        );
        return null;
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
}
