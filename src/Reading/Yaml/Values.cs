using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Nodes → values. Null goes in and out in silence; anything that is there but wrong is a finding.</summary>
internal static partial class Values
{
    /// <summary>Before anybody was born who trains now.</summary>
    public const int FirstYear = 1900;

    /// <summary>So far off that no programme, and nothing reckoned from a day, comes to the end of the calendar.</summary>
    public const int LastYear = 2199;

    [GeneratedRegex(@"^(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex NumberShape();

    [GeneratedRegex(@"^(?:(?<min>0|[1-9][0-9]{0,3}) min)?(?: ?(?<s>0|[1-9][0-9]{0,3}) s)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex SpanShape();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}\z", RegexOptions.CultureInvariant)]
    private static partial Regex DateShape();

    public const int UsualMinutes = 15;

    public static readonly (string, bool)[] YesOrNo = [("yes", true), ("no", false)];

    /// <summary>Keys whose values are called as the key is.</summary>
    private static readonly HashSet<string> Nouns = ["kind", "stage", "position", "stance", "limb", "unit", "direction"];

    public static YamlNode.Text? Text(SourceFile sheet, string key, YamlNode? node)
    {
        if (node is null)
            return null;
        sheet.Notes?.Add(node, ValueKind.Any);
        if (node is not YamlNode.Text text)
        {
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"{Quote.Of(key)} is a text, but here is {node.Kind}.",
                "Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace."
            );
            return null;
        }

        if (IsCut(sheet, text))
        {
            var behind =
                text.End.Column + sheet.Line(text.End.Line)[(text.End.Column - 1)..].IndexOf('#', StringComparison.Ordinal);
            sheet.Fault(
                Faults.ValueWrong,
                text.End with
                {
                    Column = behind,
                },
                $"{Quote.Of(key)} ends before the #, because a # after a space begins a comment.",
                "Put the text in quotation marks if the # belongs to it, or a space behind the # if it is a comment.",
                int.MaxValue
            );
            return null;
        }

        if (Spacing.Collapse(text.Value) is { Length: > 0 } value)
            return text with { Value = value };
        sheet.Fault(
            Faults.ValueWrong,
            text.At,
            $"{Quote.Of(key)} has no value.",
            "Write it after the colon; a key that is not needed can be taken out."
        );
        return null;
    }

    /// <summary>A text that may come out on a page as it is.</summary>
    public static YamlNode.Text? Shown(SourceFile sheet, string key, YamlNode? node)
    {
        var text = Text(sheet, key, node);
        if (text is not null)
            Braces.Find(sheet, key, text);
        return text;
    }

    /// <summary>Whether a # cuts off what was probably meant: a comment has a space behind its #.</summary>
    private static bool IsCut(SourceFile sheet, YamlNode.Text text)
    {
        var behind = sheet
            .Line(text.End.Line)
            .AsSpan(Math.Min(sheet.Line(text.End.Line).Length, text.End.Column - 1))
            .TrimStart();
        return text.IsPlain && behind.Length > 1 && behind[0] == '#' && !char.IsWhiteSpace(behind[1]);
    }

    public static Series<Mention<string>> Texts(SourceFile sheet, string key, YamlNode? node)
    {
        if (node is null)
            return [];
        if (node is not YamlNode.Listing list)
        {
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"{Quote.Of(key)} is a list, but here is {node.Kind}.",
                $"Write it in square brackets: {key}: [one, another]."
            );
            return [];
        }

        return list
            .Items.Select(item => Shown(sheet, key, item))
            .OfType<YamlNode.Text>()
            .Select(t => new Mention<string>(t.Value, t.At))
            .ToSeries();
    }

    public static decimal? Number(SourceFile sheet, string key, YamlNode? node)
    {
        sheet.Notes?.Add(node, new ValueKind.Number());
        if (Text(sheet, key, node) is not { } text)
            return null;
        if (NumberOf(text) is { } number)
            return number;
        Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} is no number for {Quote.Of(key)}.",
            "Write digits only, with a point before decimals and no zero in front: 15 or 4.5."
        );
        return null;
    }

    /// <param name="ever">The most that it may be in any file of the kind, where this one's own most is less.</param>
    public static int? Whole(SourceFile sheet, string key, YamlNode? node, int least, int most, int? ever = null)
    {
        sheet.Notes?.Add(node, new ValueKind.Whole(least, ever ?? most));
        if (Text(sheet, key, node) is not { } text)
            return null;
        if (NumberOf(text) is { } number && number == decimal.Truncate(number) && number >= least && number <= most)
            return (int)number;
        Wrong(
            sheet,
            text,
            $"{Quote.Of(key)} is {Quote.Of(text.Value)}, but it can only be a whole number from {least} to {most}.",
            "Write one of these numbers, in digits only."
        );
        return null;
    }

    /// <summary>Digits without quotation marks, with a point before decimals.</summary>
    public static decimal? NumberOf(YamlNode.Text text) =>
        text.IsPlain && NumberShape().IsMatch(text.Value) ? decimal.Parse(text.Value, CultureInfo.InvariantCulture) : null;

    /// <summary>The same, with a minus before it where it is below nothing.</summary>
    public static decimal? SignedOf(YamlNode.Text text) =>
        text.Value.StartsWith('-') ? -NumberOf(text with { Value = text.Value[1..] }) : NumberOf(text);

    public static DateOnly? Date(SourceFile sheet, string key, YamlNode? node)
    {
        sheet.Notes?.Add(node, ValueKind.Day);
        if (Text(sheet, key, node) is not { } text)
            return null;
        if (DayOf(text.Value) is { } date)
            return date;
        SayNoDate(
            sheet,
            text.Value,
            text.At,
            $"{Quote.Of(text.Value)} is no date.",
            "Write year, month and day with hyphens, as 2026-12-07."
        );
        return null;
    }

    /// <summary>A day from <see cref="FirstYear"/> to <see cref="LastYear"/>; null where it is none of these.</summary>
    public static DateOnly? DayOf(string written) =>
        DateOnly.TryParseExact(written, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        && IsYear(day.Year)
            ? day
            : null;

    public static bool IsYear(int year) => year is >= FirstYear and <= LastYear;

    /// <summary>Says what is wrong with a date: its shape, its year, or that no calendar has that day.</summary>
    public static void SayNoDate(SourceFile sheet, string written, Location at, string message, string help)
    {
        if (DateShape().IsMatch(written))
        {
            (message, help) = IsYear(int.Parse(written.AsSpan(0, 4), CultureInfo.InvariantCulture))
                ? ($"There is no day {written} in the calendar.", "Look at the month, and at how many days it has.")
                : ($"{written} lies outside the years {FirstYear} to {LastYear}.", "Look at the year: nobody trains then.");
        }

        sheet.Fault(Faults.ValueWrong, at, message, help, written.Length);
    }

    public static T? Choice<T>(SourceFile sheet, string key, YamlNode? node, IReadOnlyList<(string Word, T Value)> words)
        where T : struct
    {
        sheet.Notes?.Add(node, ValueKind.Of(words.Select(w => w.Word)));
        if (Text(sheet, key, node) is not { } text)
            return null;
        foreach (var (word, value) in words)
            if (string.Equals(word, text.Value, StringComparison.Ordinal))
                return value;
        var all = words.Select(w => w.Word).ToArray();
        Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} is not a {(Nouns.Contains(key) ? key : $"value of {Quote.Of(key)}")}.",
            Nearest.Ask(text.Value, all, $"Write one of: {string.Join(", ", all)}.")
        );
        return null;
    }

    /// <summary>"10 s", "2 min" or "1 min 30 s", up to 15 minutes.</summary>
    public static Seconds? Span(SourceFile sheet, string key, YamlNode? node, int least, int mostMinutes = UsualMinutes)
    {
        sheet.Notes?.Add(node, ValueKind.Time);
        if (Text(sheet, key, node) is not { } text)
            return null;
        var shape = SpanShape().Match(text.Value);
        var seconds = (60 * Part("min")) + Part("s");
        if (shape.Success && seconds >= least && seconds <= 60 * mostMinutes)
            return new(seconds);
        Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} is no time for {Quote.Of(key)}.",
            $"Write a number and s or min, from {least} s to {mostMinutes} min, as 10 s."
        );
        return null;

        int Part(string name) =>
            shape.Groups[name] is { Success: true } part ? int.Parse(part.ValueSpan, CultureInfo.InvariantCulture) : 0;
    }

    /// <summary>"60 %", as 60.</summary>
    public static int? Percent(SourceFile sheet, string key, YamlNode? node, int most = 100)
    {
        sheet.Notes?.Add(node, ValueKind.Share(most));
        if (Text(sheet, key, node) is not { } text)
            return null;
        var number = text.Value.EndsWith('%') ? text.Value[..^1].TrimEnd() : "";
        if (
            NumberShape().IsMatch(number)
            && decimal.Parse(number, CultureInfo.InvariantCulture) is >= 1 and var percent
            && percent <= most
            && percent == decimal.Truncate(percent)
        )
            return (int)percent;
        Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} is no share for {Quote.Of(key)}.",
            $"Write a whole number from 1 to {most} and a per cent sign, as 60 %."
        );
        return null;
    }

    /// <summary>"180 days", up to ten years.</summary>
    public static int? Days(SourceFile sheet, string key, YamlNode? node)
    {
        sheet.Notes?.Add(node, ValueKind.DayCount);
        if (Text(sheet, key, node) is not { } text)
            return null;
        var number = text.Value.EndsWith(" days", StringComparison.Ordinal) ? text.Value[..^5] : "";
        if (
            number.Length is > 0 and < 5
            && number.All(char.IsAsciiDigit)
            && number[0] != '0'
            && int.Parse(number, CultureInfo.InvariantCulture) is <= 3650 and var days
        )
            return days;
        Wrong(
            sheet,
            text,
            $"{Quote.Of(text.Value)} is no number of days for {Quote.Of(key)}.",
            "Write a whole number and days, as 180 days."
        );
        return null;
    }

    public static void Wrong(SourceFile sheet, YamlNode.Text text, string message, string help) =>
        sheet.Fault(Faults.ValueWrong, text.At, message, help, text.Value.Length);
}
