using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Goes through a dose line from left to right. Places are those of the line as written. The first fault it is told is
/// the one that counts.</summary>
internal sealed class DoseScanner(string line)
{
    /// <summary>Where the run of letters began whose last word was taken; a run may hold several words (<c>sat</c> in
    /// <c>30sat50%</c>).</summary>
    private int runStart = -1;

    /// <summary>Where the last word ended.</summary>
    private int wordEnd = -1;

    public int At { get; private set; }

    public DoseFault? Fault { get; private set; }

    public string Line => line;

    /// <summary>The next character that is no white space, as the language reads it; NUL at the end.</summary>
    public char Next()
    {
        while (At < line.Length && char.IsWhiteSpace(line[At]))
            At++;
        return At == line.Length ? '\0' : DoseLetters.Fold(line[At]);
    }

    public bool IsDone => Next() == '\0' && At == line.Length;

    public bool AtDigit => char.IsAsciiDigit(Next());

    public bool Take(char symbol)
    {
        if (Next() != symbol || At == line.Length)
            return false;
        At++;
        return true;
    }

    public bool Take(string word) => TakeOf([word]) is not null;

    /// <summary>The longest of the words that stands next. A run of letters that is not made of known words only is one unknown
    /// word, and nothing of it is taken.</summary>
    public string? TakeOf(IReadOnlyList<string> words)
    {
        Next();
        var word = words.Where(StandsHere).MaxBy(w => w.Length);
        if (word is null)
            return null;
        var end = At + word.Length;
        if (end < line.Length && char.IsLetter(line[end]) && !DoseVocabulary.MayEnd(word, RunFrom(At), line[At] == '×'))
            return null;
        if (At != wordEnd)
            runStart = At;
        At = end;
        wordEnd = end;
        if (word == "x")
            runStart = end;
        return word;
    }

    /// <summary>Digits as they stand; empty where there are none.</summary>
    public (string Digits, LinePlace Place) TakeDigits()
    {
        Next();
        var start = At;
        while (At < line.Length && char.IsAsciiDigit(line[At]))
            At++;
        return (line[start..At], new(start, At));
    }

    /// <summary>Everything up to the next comma, single spaces, none at the ends.</summary>
    public (string Text, LinePlace Place) TakeText()
    {
        Next();
        var start = At;
        var comma = line.IndexOf(',', start);
        At = comma < 0 ? line.Length : comma;
        return (Spacing.Collapse(line[start..At]), new(start, Math.Max(start, start + line[start..At].TrimEnd().Length)));
    }

    /// <summary>What stands next, for a message: a whole run of letters, a whole run of digits, or one character; null at the
    /// end.</summary>
    public FoundInLine? Look()
    {
        if (IsDone)
            return null;
        var start = At == wordEnd && runStart >= 0 && char.IsLetter(line[At]) ? Math.Min(runStart, At) : At;
        var end = start + 1;
        if (char.IsLetter(line[start]))
            end = start + RunFrom(start).Length;
        else if (char.IsAsciiDigit(line[start]))
            while (end < line.Length && char.IsAsciiDigit(line[end]))
                end++;
        else if (char.IsHighSurrogate(line[start]) && end < line.Length && char.IsLowSurrogate(line[end]))
            end++;
        return new(line[start..end], new(start, end), start < At);
    }

    /// <summary>Everything from a place to where the scanner stands, without white space at the end.</summary>
    public LinePlace Since(int start) => new(start, start + line[start..At].TrimEnd().Length);

    /// <summary>Keeps the fault where it is the first, and gives null.</summary>
    public T? Refuse<T>(LinePlace place, string message, string help, DoseFaultKind kind = DoseFaultKind.Unreadable)
        where T : class
    {
        Fault ??= new(kind, place.Start, Math.Max(1, place.End - place.Start), message, help);
        return null;
    }

    /// <summary>Where something is missing: after the last character that is no white space.</summary>
    public LinePlace Ending => new(line.TrimEnd().Length, line.TrimEnd().Length);

    private bool StandsHere(string word)
    {
        if (At + word.Length > line.Length)
            return false;
        for (var i = 0; i < word.Length; i++)
            if (DoseLetters.Fold(line[At + i]) != word[i])
                return false;
        return true;
    }

    private string RunFrom(int start)
    {
        var end = start;
        while (end < line.Length && (char.IsLetter(line[end]) || (end == start && line[end] == '×')))
            end++;
        return DoseLetters.Fold(line[start..end]);
    }
}

/// <summary>A stretch of a line: from the start to before the end.</summary>
internal readonly record struct LinePlace(int Start, int End);

/// <summary>Something in a line.</summary>
/// <param name="IsGlued">Whether known words at the beginning of the run had been taken before it turned out to be one unknown
/// word.</param>
internal sealed record FoundInLine(string Text, LinePlace Place, bool IsGlued)
{
    public bool IsWord => char.IsLetter(Text[0]);

    public bool IsNumber => char.IsAsciiDigit(Text[0]);

    /// <summary>In small letters.</summary>
    public string Word => DoseLetters.Fold(Text);

    /// <summary>For a message: quoted, and cut where it is very long.</summary>
    public string Quoted => DoseLetters.Quote(Text);
}
