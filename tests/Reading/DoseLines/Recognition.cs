namespace Gradus.Tests.Reading;

/// <summary>A recogniser that gives every way to read a text from a place on: a list of successes, each with where it
/// ended.</summary>
internal delegate IEnumerable<(T Value, int At)> Reads<T>(string text, int at);

/// <summary>Recognisers put together: sequence by query syntax, choice by <see cref="Either{T}"/>. Nothing is cut off: of a
/// choice all ways are followed, of a repetition all lengths, of a number all its beginnings.</summary>
internal static class Recognition
{
    public static Reads<TResult> Select<T, TResult>(this Reads<T> reads, Func<T, TResult> map) =>
        (text, at) => reads(text, at).Select(one => (map(one.Value), one.At));

    public static Reads<TResult> SelectMany<T, TNext, TResult>(
        this Reads<T> reads,
        Func<T, Reads<TNext>> next,
        Func<T, TNext, TResult> map
    ) =>
        (text, at) =>
            from first in reads(text, at)
            from second in next(first.Value)(text, first.At)
            select (map(first.Value, second.Value), second.At);

    public static Reads<T> Of<T>(T value) => (_, at) => [(value, at)];

    public static Reads<T> Either<T>(params Reads<T>[] ways) => (text, at) => ways.SelectMany(way => way(text, at));

    public static Reads<T?> Optional<T>(Reads<T> reads)
        where T : class => Either(reads.Select(value => (T?)value), Of<T?>(null));

    public static Reads<List<T>> Many<T>(Reads<T> reads) =>
        Either(Of<List<T>>([]), from first in reads from others in Many(reads) select new List<T>([first, .. others]));

    /// <summary>A word or a sign, after any white space; the multiplication sign, the en dash and capitals count as x, - and
    /// small letters.</summary>
    public static Reads<string> Word(string word) =>
        (text, at) =>
        {
            var start = Skip(text, at);
            if (start + word.Length > text.Length)
                return [];
            var written = text.Substring(start, word.Length).Replace('×', 'x').Replace('–', '-');
            return written.Equals(word, StringComparison.OrdinalIgnoreCase) && written.All(char.IsAscii)
                ? [(word, start + word.Length)]
                : [];
        };

    /// <summary>A whole number without leading zero, after any white space: each way to stop within the digits.</summary>
    public static Reads<Whole> Number() => Digits;

    /// <summary>Any text with something in it, up to the next comma, as written.</summary>
    public static Reads<string> Text() =>
        (text, at) =>
        {
            var comma = text.IndexOf(',', at);
            var end = comma < 0 ? text.Length : comma;
            return text[at..end].Any(c => !char.IsWhiteSpace(c)) ? [(text[at..end], end)] : [];
        };

    /// <summary>Every way to read the whole text.</summary>
    public static IEnumerable<T> All<T>(Reads<T> reads, string text) =>
        reads(text, 0).Where(one => Skip(text, one.At) == text.Length).Select(one => one.Value);

    private static IEnumerable<(Whole Value, int At)> Digits(string text, int at)
    {
        var start = Skip(text, at);
        var value = 0m;
        for (var end = start; end < text.Length && text[end] is >= '0' and <= '9'; end++)
        {
            if (end > start && text[start] == '0')
                yield break;
            value = Math.Min(1e12m, (value * 10) + (text[end] - '0'));
            yield return (new(value), end + 1);
        }
    }

    private static int Skip(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }
}

internal sealed record Whole(decimal Value);
