using System.Globalization;

namespace Gradus.Auditing;

/// <summary>Number words and digits → a number.</summary>
internal static class SpokenNumbers
{
    /// <summary>The number that begins at a token, and the token behind it; null where there is none. Halves are kept.</summary>
    public static (decimal Value, int Next)? At(SpokenSentence sentence, int at)
    {
        var word = sentence.Word(at);
        if (word.Length == 0)
            return null;
        if (sentence[at].IsNumber)
            return Digits(sentence, at);
        if (word == "½")
            return (0.5m, at + 1);
        if (word is "a" or "one" && sentence.Word(at + 1) is "hundred" or "dozen")
            return (sentence.Word(at + 1) == "dozen" ? 12 : 100, at + 2);
        if (SpokenWords.Tens.TryGetValue(word, out var tens))
        {
            var next = at + 1 < sentence.Count && sentence[at + 1].IsDash ? at + 2 : at + 1;
            return SpokenWords.Numbers.TryGetValue(sentence.Word(next), out var ones) && ones < 10
                ? (tens + ones, next + 1)
                : (tens, at + 1);
        }

        return SpokenWords.Numbers.TryGetValue(word, out var small) ? (small, at + 1) : null;
    }

    /// <summary>"1½" is one number; a longer one than six digits is none of a dose.</summary>
    private static (decimal Value, int Next)? Digits(SpokenSentence sentence, int at)
    {
        var digits = sentence.Word(at);
        if (digits.Length > 6)
            return null;
        var value = decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return sentence.Word(at + 1) == "½" ? (value + 0.5m, at + 2) : (value, at + 1);
    }
}
