using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Letters that nobody sees: they turn words round, or keep a name from being found. The joiners of Persian, of Indian
/// scripts and of emoji are none, nor is the soft hyphen, which shows where a word may break.</summary>
internal static class UnseenLetters
{
    private const string Marks = "\u200E\u200F\u061C";
    private const string Turning = "\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";
    private const string Empty = "\u200B\u2060\u2061\u2062\u2063\u2064\uFEFF\u180E\u115F\u1160\u3164\uFFA0";

    public static bool Contains(char letter) =>
        Marks.Contains(letter, StringComparison.Ordinal)
        || Turning.Contains(letter, StringComparison.Ordinal)
        || Empty.Contains(letter, StringComparison.Ordinal);

    /// <summary>Says of each line the first.</summary>
    public static void Find(SourceFile file)
    {
        foreach (var (number, line) in file.Text.Split('\n').Index())
            if (line.IndexOfAny([.. Marks, .. Turning, .. Empty]) is >= 0 and var at)
                Say(file, file.At(number + 1, at + 1), line[at]);
    }

    private static void Say(SourceFile file, Location at, char letter)
    {
        var message = FormattableString.Invariant($"Here stands a letter that nobody sees (U+{(int)letter:X4}).");
        if (Marks.Contains(letter, StringComparison.Ordinal))
            file.Warn(Faults.LetterUnseen, at, message, "Delete it, unless the direction of the words beside it needs it.");
        else
            file.Fault(Faults.LetterUnseen, at, message, "Delete it; such letters come with text that was pasted in.");
    }
}
