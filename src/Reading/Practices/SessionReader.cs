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
        var of = fields.Mention("of");
        var insteadOf = of is null ? fields.NeedMention("instead-of") : fields.Mention("instead-of") ?? of;
        var kind = fields.NeedChoice("kind", Kinds);
        var replaced = Named(fields.SourceFile, insteadOf, sessions);
        var whole = of is null || of == insteadOf ? replaced : Named(fields.SourceFile, of, sessions);
        var share = of is null ? null : fields.Whole("share", 1, 100);
        var taken = whole is null ? null : new TakenSession(whole.Name, share ?? 100);
        var done = of is null ? uses.Read(fields) : TakenUses(fields, whole, taken);
        fields.Done();
        return name is null || kind is null || replaced is null || (of is not null && taken is null)
            ? null
            : new(name, replaced.Days, done, insteadOf, kind, fields.At) { Taken = of is null ? null : taken };
    }

    /// <summary>Those uses of a session that are named, and all of them where none is, in its order.</summary>
    private static Series<ProgrammeUse> TakenUses(Fields fields, ProgrammeSession? whole, TakenSession? taken)
    {
        if (fields.Take("do") is { } written)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                written.At,
                "It says what is done, and that its uses are those of another session.",
                "Keep 'do' or 'of'. A use that only some clients do otherwise is one of their 'differences'."
            );
        var named = fields.Texts("uses");
        if (whole is null || taken is null)
            return [];
        var there = whole.Do.Select(u => u.Name).ToArray();
        foreach (var unknown in named.Where(n => !there.Contains(n.Value, StringComparer.Ordinal)))
            fields.SourceFile.Fault(
                Faults.IdUnknown,
                unknown.At,
                $"There is no use {Quote.Of(unknown.Value)} in {Quote.Of(whole.Name)}.",
                Nearest.Ask(unknown.Value, there, $"Its uses are: {string.Join(", ", there)}."),
                unknown.Value.Length
            );
        return whole.Do.Where(u => named.Count == 0 || named.Any(n => n.Value == u.Name)).Select(taken.From).ToSeries();
    }

    private static ProgrammeSession? Named(SourceFile sheet, Mention<string>? asked, Series<ProgrammeSession> sessions)
    {
        var found = sessions.FirstOrDefault(s => s.Name == asked?.Value);
        if (asked is not null && found is null)
            sheet.Fault(
                Faults.IdUnknown,
                asked.At,
                $"There is no session {Quote.Of(asked.Value)} in this programme.",
                Nearest.Ask(asked.Value, sessions.Select(s => s.Name), "Write the name of one of its sessions."),
                asked.Value.Length
            );
        return found;
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
