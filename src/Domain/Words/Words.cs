using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Gradus.Domain;

/// <summary>The words of one language: every phrase of the site that no coach wrote, read from a catalogue file. A word that is
/// missing is a programmer's mistake, because a catalogue is read whole and checked before it is used.</summary>
public sealed class Words(Language language, FrozenDictionary<string, Phrase> phrases)
{
    private readonly Lazy<string> written = new(() => Written(language, phrases));

    // Around what reads from left to right inside a line that reads from right to left (Unicode Standard Annex 9: first strong
    // isolate, pop directional isolate).
    private const char Isolate = '\u2068';
    private const char EndIsolate = '\u2069';

    /// <summary>The first letter of the scripts that are written from right to left; the letters before it are of scripts that
    /// are not.</summary>
    private const char FirstOfRightToLeft = '\u0590';

    /// <summary>Spans of steps and of sessions, which are said again and again, are worded once.</summary>
    private const int KeptSpans = 2 * 60 * 60;

    private readonly string?[] shortSpans = new string?[KeptSpans];

    /// <summary>BCP 47.</summary>
    public string Language => language.Code;

    /// <summary>"ltr" or "rtl", as HTML has it.</summary>
    public string Direction => language.Direction;

    public IEnumerable<string> Keys => phrases.Keys.Order(StringComparer.Ordinal);

    /// <summary>The phrase, with each <c>{name}</c> in it replaced. A whole number called <c>n</c>, or else the end of a range
    /// called <c>high</c>, chooses the form.</summary>
    public string Say(string key, params ReadOnlySpan<(string Name, object Value)> fills)
    {
        if (!phrases.TryGetValue(key, out var phrase))
            throw new KeyNotFoundException($"The catalogue of '{Language}' has no word '{key}'.");
        return Fill(phrase.In(NumberIn(fills) is { } number ? language.FormOf(number) : Domain.Language.Other), key, fills);
    }

    /// <summary>The phrase, or what is said instead where the catalogue has none.</summary>
    public string SayOr(string key, string instead) => phrases.ContainsKey(key) ? Say(key) : instead;

    /// <summary>What the phrase says of each kind of number that it tells apart, with nothing filled in: for a script, which
    /// fills it in. The last is <see cref="Domain.Language.Other"/>, which holds for every kind that is not there.</summary>
    public IEnumerable<(string Form, string Said)> Forms(string key)
    {
        var phrase = phrases[key];
        return language
            .Forms.Where(form => form == Domain.Language.Other || phrase.In(form) != phrase.Other)
            .Select(form => (form, phrase.In(form)));
    }

    /// <summary>A phrase that needs no filling, or null.</summary>
    public string? Plain(string key) =>
        phrases.GetValueOrDefault(key) is { } phrase && !phrase.Other.Contains('{', StringComparison.Ordinal)
            ? phrase.Other
            : null;

    /// <summary>"45 seconds", "2 minutes", "1 min 30 s": a span in running text.</summary>
    public string Span(Seconds span) =>
        span.Value < 60 ? Say("seconds", ("n", span.Value))
        : span.Value % 60 == 0 ? Say("minutes", ("n", span.Value / 60))
        : ShortSpan(span);

    /// <summary>"45 s", "2 min", "1 min 48 s": a span to the second, where seconds matter.</summary>
    public string ShortSpan(Seconds span) =>
        span.Value is >= 0 and < KeptSpans ? shortSpans[span.Value] ??= Short(span) : Short(span);

    private string Short(Seconds span)
    {
        var (minutes, seconds) = (span.Value / 60, span.Value % 60);
        string[] parts =
        [
            .. minutes > 0 ? [Say("short-minutes", ("n", minutes))] : Array.Empty<string>(),
            .. seconds > 0 || minutes == 0 ? [Say("short-seconds", ("n", seconds))] : Array.Empty<string>(),
        ];
        return string.Join(' ', parts);
    }

    /// <summary>As a person says how long something takes: "40 s", "1½ min", "10 min". Below a minute in fives of seconds, below
    /// five minutes in halves, then whole minutes; at least the smallest of them.</summary>
    public string About(Seconds span)
    {
        return span.Value < 58
            ? Say("short-seconds", ("n", Math.Max(5, (span.Value + 2) / 5 * 5)))
            : Say("short-minutes", ("n", HalfMinutes(span)));
    }

    /// <summary>"½", "1", "1½" up to five minutes, then whole ones; at least the smallest of them.</summary>
    public static string HalfMinutes(Seconds span)
    {
        var halves = Math.Max(1, (span.Value + 15) / 30);
        return halves >= 10 ? FormattableString.Invariant($"{(span.Value + 30) / 60}")
            : halves == 1 ? "½"
            : FormattableString.Invariant($"{halves / 2}{(halves % 2 == 1 ? "½" : "")}");
    }

    /// <summary>"30 seconds" or "30 to 60 seconds".</summary>
    public string Spans(Count seconds) =>
        seconds.IsSingle ? Span(new(seconds.Low))
        : seconds is { Low: >= 120 } && seconds.Low % 60 == 0 && seconds.High % 60 == 0
            ? Say("minutes-range", ("low", seconds.Low / 60), ("high", seconds.High / 60))
        : Say("seconds-range", ("low", seconds.Low), ("high", seconds.High));

    /// <summary>"3" or "2 to 3".</summary>
    public string Number(Count number) =>
        number.IsSingle
            ? number.Low.ToString(CultureInfo.InvariantCulture)
            : Say("range", ("low", number.Low), ("high", number.High));

    /// <summary>"9.5", "9,5": at most one decimal.</summary>
    public string Decimal(decimal number) =>
        number.ToString("0.#", CultureInfo.InvariantCulture).Replace(".", Say("decimal-point"), StringComparison.Ordinal);

    /// <summary>"Monday 7 December 2026", "Montag, 7. Dezember 2026".</summary>
    public string Date(DateOnly date) =>
        Say(
            "date",
            ("weekday", Weekday(date.DayOfWeek)),
            ("day", date.Day),
            ("month", Say($"month-{date.Month}")),
            ("year", date.Year)
        );

    /// <summary>Without the day of the week.</summary>
    public string PlainDate(DateOnly date) =>
        Say("plain-date", ("day", date.Day), ("month", Say($"month-{date.Month}")), ("year", date.Year));

    public string Weekday(DayOfWeek day) => Say("weekday-" + day.ToString().ToLowerInvariant());

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public string And(IReadOnlyList<string> items)
    {
        if (items.Count < 2)
            return Joined(items, "comma");
        return Say("and", ("before", Joined([.. items.SkipLast(1)], "comma")), ("after", items[^1]));
    }

    /// <summary>Several things in a row, each put behind those before it by a phrase with <c>{before}</c> and
    /// <c>{after}</c>.</summary>
    public string Joined(IReadOnlyList<string> items, string key)
    {
        var said = items.Count > 0 ? items[0] : "";
        for (var i = 1; i < items.Count; i++)
            said = Say(key, ("before", said), ("after", items[i]));
        return said;
    }

    /// <summary>"Week 2", "Weeks 1 and 2", "Weeks 1 to 3", "Weeks 1, 2 and 4".</summary>
    /// <param name="weeks">In rising order, at least one.</param>
    public string Weeks(Series<int> weeks)
    {
        if (weeks.Count == 1)
            return Say("week", ("week", weeks[0]));
        var unbroken = weeks.Count > 2 && weeks[^1] - weeks[0] == weeks.Count - 1;
        return Say(
            "weeks",
            (
                "weeks",
                unbroken
                    ? Say("range", ("low", weeks[0]), ("high", weeks[^1]))
                    : And([.. weeks.Select(w => w.ToString(CultureInfo.InvariantCulture))])
            )
        );
    }

    /// <summary>Its language and a hash of all it can say, by which two catalogues are told apart.</summary>
    public override string ToString() => written.Value;

    private static string Written(Language language, FrozenDictionary<string, Phrase> phrases) =>
        language.Code
        + " "
        + TextHash.Of(
            phrases
                .OrderBy(p => p.Key, StringComparer.Ordinal)
                .SelectMany(p => language.Forms.Select(form => p.Value.In(form)).Prepend(p.Key))
        );

    private string Fill(string phrase, string key, ReadOnlySpan<(string Name, object Value)> fills)
    {
        var said = new StringBuilder();
        var at = 0;
        while (at < phrase.Length)
        {
            var open = phrase.IndexOf('{', at);
            if (open < 0)
                break;
            var close = phrase.IndexOf('}', open);
            said.Append(phrase, at, open - at).Append(ValueOf(phrase[(open + 1)..close], key, fills));
            at = close + 1;
        }

        return said.Append(phrase, at, phrase.Length - at).ToString();
    }

    private string ValueOf(string name, string key, ReadOnlySpan<(string Name, object Value)> fills)
    {
        foreach (var fill in fills)
            if (string.Equals(fill.Name, name, StringComparison.Ordinal))
                return Shown(fill.Value);
        throw new ArgumentException($"The phrase '{key}' asks for '{name}', which it is not given.", nameof(name));
    }

    /// <summary>A fraction is written to its tenths.</summary>
    private string Shown(object value)
    {
        if (value is decimal number)
            return number
                .ToString("0.#", CultureInfo.InvariantCulture)
                .Replace(".", language.DecimalMark, StringComparison.Ordinal);
        var text = Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
        return language.IsRightToLeft && text.Any(c => char.IsLetter(c) && c < FirstOfRightToLeft)
            ? $"{Isolate}{text}{EndIsolate}"
            : text;
    }

    private static int? NumberIn(ReadOnlySpan<(string Name, object Value)> fills)
    {
        int? high = null;
        foreach (var (name, value) in fills)
        {
            if (name == "n" && value is int number)
                return number;
            if (name == "high" && value is int end)
                high = end;
        }

        return high;
    }
}

/// <summary>A catalogue for each language.</summary>
public sealed class WordBook(IEnumerable<Words> catalogues)
{
    private readonly FrozenDictionary<string, Words> catalogues = catalogues.ToFrozenDictionary(
        w => w.Language,
        StringComparer.Ordinal
    );

    public IEnumerable<string> Languages => catalogues.Keys.Order(StringComparer.Ordinal);

    public Words? In(string language) => catalogues.GetValueOrDefault(language);

    /// <param name="other">A language that there is a catalogue for.</param>
    public Words In(string language, string other) => In(language) ?? catalogues[other];
}
