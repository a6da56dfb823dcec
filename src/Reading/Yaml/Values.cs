using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Nodes → values. Null goes in and out in silence; anything that is there but wrong is a finding.</summary>
internal static partial class Values
{
    [GeneratedRegex(@"^(0|[1-9]\d{0,8})(\.\d{1,6})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex NumberShape();

    [GeneratedRegex(@"^(?:(?<min>0|[1-9]\d{0,3}) min)?(?: ?(?<s>0|[1-9]\d{0,3}) s)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex SpanShape();

    public static YamlNode.Text? Text(Sheet sheet, string key, YamlNode? node)
    {
        if (node is null) return null;
        if (node is not YamlNode.Text text)
        {
            sheet.Fault(Faults.ValueWrong, node.At, $"'{key}' is a text, but here is {node.Kind}.", "Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.");
            return null;
        }

        if (text.IsPlain && sheet.Line(text.At.Line) is var line && line.IndexOf(" #", Math.Min(line.Length, text.At.Column), StringComparison.Ordinal) is >= 0 and var cut)
        {
            sheet.Fault(
                Faults.ValueWrong, text.At with { Column = cut + 2 }, $"'{key}' ends before the #: what follows is a comment.",
                "Put the comment on a line of its own, or the text in quotation marks if the # belongs to it.", line.Length - cut - 1);
            return null;
        }

        if (text.Value.Length > 0) return text;
        sheet.Fault(Faults.ValueWrong, text.At, $"'{key}' has no value.", "Write one after the colon, or take the key out.");
        return null;
    }

    public static Series<Mention<string>> Texts(Sheet sheet, string key, YamlNode? node)
    {
        if (node is null) return [];
        if (node is not YamlNode.Listing list)
        {
            sheet.Fault(Faults.ValueWrong, node.At, $"'{key}' is a list, but here is {node.Kind}.", $"Write it in square brackets: {key}: [one, another].");
            return [];
        }

        return list.Items.Select(item => Text(sheet, key, item)).OfType<YamlNode.Text>().Select(t => new Mention<string>(t.Value, t.At)).ToSeries();
    }

    public static decimal? Number(Sheet sheet, string key, YamlNode? node)
    {
        if (Text(sheet, key, node) is not { } text) return null;
        if (text.IsPlain && NumberShape().IsMatch(text.Value)) return decimal.Parse(text.Value, CultureInfo.InvariantCulture);
        Wrong(sheet, text, $"'{text.Value}' is no number that '{key}' can have.", "Write digits only, with a point before decimals and no zero in front: 15 or 4.5.");
        return null;
    }

    public static int? Whole(Sheet sheet, string key, YamlNode? node, int least, int most)
    {
        if (Number(sheet, key, node) is not { } number || node is not YamlNode.Text text) return null;
        if (number == decimal.Truncate(number) && number >= least && number <= most) return (int)number;
        Wrong(sheet, text, $"'{key}' is {text.Value}; it goes from {least} to {most}.", "Write a whole number between the two.");
        return null;
    }

    public static DateOnly? Date(Sheet sheet, string key, YamlNode? node)
    {
        if (Text(sheet, key, node) is not { } text) return null;
        if (DateOnly.TryParseExact(text.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        Wrong(sheet, text, $"'{text.Value}' is no date.", "Write year, month and day with hyphens, as 2026-12-07.");
        return null;
    }

    public static bool? Flag(Sheet sheet, string key, YamlNode? node) => Choice(sheet, key, node, [("yes", true), ("no", false)]);

    public static T? Choice<T>(Sheet sheet, string key, YamlNode? node, IReadOnlyList<(string Word, T Value)> words)
        where T : struct
    {
        if (Text(sheet, key, node) is not { } text) return null;
        foreach (var (word, value) in words)
            if (string.Equals(word, text.Value, StringComparison.Ordinal)) return value;
        var all = words.Select(w => w.Word).ToArray();
        Wrong(sheet, text, $"'{text.Value}' is nothing that '{key}' can be.", Nearest.Ask(text.Value, all, $"Write one of: {string.Join(", ", all)}."));
        return null;
    }

    /// <summary>"10 s", "2 min" or "1 min 30 s", up to 15 minutes.</summary>
    public static Seconds? Span(Sheet sheet, string key, YamlNode? node, int least)
    {
        if (Text(sheet, key, node) is not { } text) return null;
        var shape = SpanShape().Match(text.Value);
        var seconds = (60 * Part("min")) + Part("s");
        if (shape.Success && seconds >= least && seconds <= 900) return new(seconds);
        Wrong(sheet, text, $"'{text.Value}' is no time that '{key}' can be.", $"Write a number and s or min, from {least} s to 15 min, as 10 s.");
        return null;

        int Part(string name) => shape.Groups[name] is { Success: true } part ? int.Parse(part.ValueSpan, CultureInfo.InvariantCulture) : 0;
    }

    /// <summary>"60 %", as 60.</summary>
    public static int? Percent(Sheet sheet, string key, YamlNode? node)
    {
        if (Text(sheet, key, node) is not { } text) return null;
        var number = text.Value.EndsWith('%') ? text.Value[..^1].TrimEnd() : "";
        if (NumberShape().IsMatch(number) && decimal.Parse(number, CultureInfo.InvariantCulture) is >= 1 and <= 100 and var percent && percent == decimal.Truncate(percent))
            return (int)percent;
        Wrong(sheet, text, $"'{text.Value}' is no share that '{key}' can be.", "Write a whole number from 1 to 100 and a per cent sign, as 60 %.");
        return null;
    }

    public static void Wrong(Sheet sheet, YamlNode.Text text, string message, string help) =>
        sheet.Fault(Faults.ValueWrong, text.At, message, help, Math.Max(1, text.Value.Length));
}
