using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Whom the client calls, as sentences in which every number can be pressed.</summary>
internal static class EmergencyWords
{
    /// <summary>A number to call has three digits at least; a shorter one in a sentence counts something else: hours.</summary>
    private const string Number = @"\+?[0-9](?: ?[0-9]){2,14}";

    /// <exception cref="ArgumentException">Nothing is said for the client's country; check the practice first.</exception>
    public static EmergencyNumber NumberFor(Texts texts) =>
        texts.Card.EmergencyIn(texts.Client.Country.Value)
        ?? throw new ArgumentException("No number to call in an emergency.", nameof(texts));

    public static PlannedEmergency Of(Texts texts)
    {
        var (number, words, at) = (NumberFor(texts), texts.Words, texts.Card.At);
        string[] sentences =
        [
            words.Say("emergency-call", ("call", number.Call)),
            .. number.Unsure is { } unsure ? [words.Say("emergency-unsure", ("unsure", unsure))] : Array.Empty<string>(),
            .. number.Text is { } text && words.Language == texts.Card.Language ? [text] : Array.Empty<string>(),
        ];
        return new(
            number.Call,
            PhoneAddress.Of(number.Call),
            Pressed(string.Join(' ', sentences), number, at),
            Pressed(words.Say("guide-chest-first", ("call", number.Call)), number, at)
        );
    }

    /// <summary>The number where a coach's text has its placeholder.</summary>
    public static Inline.Link Link(EmergencyNumber number, Location at) =>
        new(PhoneAddress.Of(number.Call), [new Inline.Plain(number.Call)], at);

    private static Series<Inline> Pressed(string sentence, EmergencyNumber number, Location at)
    {
        var inlines = new List<Inline>();
        var from = 0;
        foreach (Match match in NumberIn(number).Matches(sentence))
        {
            if (match.Index > from)
                inlines.Add(new Inline.Plain(sentence[from..match.Index]));
            inlines.Add(new Inline.Link(PhoneAddress.Of(match.Value), [new Inline.Plain(match.Value)], at));
            from = match.Index + match.Length;
        }

        if (from < sentence.Length)
            inlines.Add(new Inline.Plain(sentence[from..]));
        return inlines.ToSeries();
    }

    /// <summary>The numbers that the practice names, however short, and whatever else looks like one.</summary>
    private static Regex NumberIn(EmergencyNumber number) =>
        new(
            @"(?<![\p{L}\p{Nd}+])(?:"
                + $"{Regex.Escape(number.Call)}|{Regex.Escape(number.Unsure ?? number.Call)}|{Number}"
                + @")(?![\p{L}\p{Nd}])",
            RegexOptions.CultureInvariant
        );
}
