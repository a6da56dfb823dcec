using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One cell of a log, or one part of its line in a message. What cannot be read is told, and is null as if it had not
/// been said.</summary>
/// <param name="Text">Without blanks around it.</param>
/// <param name="Line">From 1.</param>
internal sealed partial record LogField(string Name, string Text, int Line, LogRemarks Remarks)
{
    [GeneratedRegex(@"^[0-9]{1,6}(?:[.,]0{1,6})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex WholeShape();

    [GeneratedRegex(@"^-?[0-9]{1,5}(?:[.,][0-9]{1,6})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex NumberShape();

    [GeneratedRegex(@"^(?:(?<level>[0-9]{1,3})(?: |\z))?(?:(?<side>left|right) )?(?<where>[a-z][a-z -]*)?\z")]
    private static partial Regex PainShape();

    [GeneratedRegex(@"^[0-9a-fA-F]{16}\z", RegexOptions.CultureInvariant)]
    private static partial Regex KeyShape();

    public bool IsBlank => Text.Length == 0;

    private string Said => $"{Name} {Letters.Shown(Text)}";

    /// <summary>Both bounds are inclusive.</summary>
    public int? Whole(int least, int most)
    {
        if (IsBlank)
            return null;
        if (
            WholeShape().IsMatch(Text)
            && int.Parse(Text.Split('.', ',')[0], CultureInfo.InvariantCulture) is var number
            && number >= least
            && number <= most
        )
            return number;
        return Unread<int>(string.Create(CultureInfo.InvariantCulture, $"{Said} is not {least} to {most}"));
    }

    public decimal? Number(decimal least, decimal most) =>
        IsBlank ? null
        : NumberOf(Text) is { } number && number >= least && number <= most ? number
        : Unread<decimal>(string.Create(CultureInfo.InvariantCulture, $"{Said} is not {least} to {most}"));

    /// <summary>Several with blanks between them; all or none.</summary>
    public Series<decimal> Numbers()
    {
        var numbers = Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(NumberOf).ToArray();
        if (!numbers.Contains(null))
            return numbers.OfType<decimal>().ToSeries();
        Unread<int>($"{Said} is not numbers with blanks between them");
        return [];
    }

    public T? Word<T>()
        where T : struct, Enum =>
        IsBlank ? null
        : LogWords<T>.Of(Text) is { } word ? word
        : Unread<T>($"{Said} is none of {LogWords<T>.All}");

    public bool? Flag() =>
        IsBlank ? null
        : Is("yes") ? true
        : Is("no") ? false
        : Unread<bool>($"{Said} is neither yes nor no");

    public bool Is(string word) => string.Equals(Text, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>A sign that cannot wait must not be lost by a slip of the pen.</summary>
    public RedFlag? Alarm()
    {
        if (IsBlank || LogWords<RedFlag>.Of(Text) is not null)
            return LogWords<RedFlag>.Of(Text);
        Remarks.Unread(Line, $"{Said} is a sign that is not known here: ask the client today", cannotWait: true);
        return RedFlag.Other;
    }

    public string? Key() =>
        IsBlank ? null
        : KeyShape().IsMatch(Text) ? Text.ToLowerInvariant()
        : UnreadText($"{Said} is no key of 16 hexadecimal digits");

    public string? Edition() => IsBlank || Is("unknown") ? null : Text;

    public ExerciseId? Exercise() => Id.IsValid(Text) ? new(Text) : null;

    /// <summary>"2 left knee", or the level or the place alone.</summary>
    public LoggedPain? Pain()
    {
        if (IsBlank)
            return null;
        if (PainShape().Match(Text.ToLowerInvariant()) is not { Success: true } shape)
        {
            Unread<int>($"{Said} is not a number from 0 to 10 and a place, as 2 left knee");
            return null;
        }

        var level = (this with { Text = shape.Groups["level"].Value }).Whole(0, 10);
        if (shape.Groups["level"].Success && level is null)
            return null;
        return PainAt(level, shape.Groups["side"].Value, shape.Groups["where"].Value);
    }

    /// <summary>Null where neither the level nor the place says anything.</summary>
    public LoggedPain? PainAt(int? level, string side, string where)
    {
        var region = where.Length == 0 ? null : Region.Find(where) ?? Region.Find(where.Replace('-', ' '));
        if (where.Length > 0 && region is null)
            Unread<int>($"{Name}: the place {Letters.Quoted(where)} is not known here");
        return level is null && region is null ? null : new(level, region, region is { IsSided: true } ? SideOf(side) : null);
    }

    public Side? Side() =>
        IsBlank ? null
        : SideOf(Text) is { } side ? side
        : Unread<Side>($"{Said} is neither left nor right");

    public static Side? SideOf(string word) =>
        word.ToLowerInvariant() switch
        {
            "left" => Domain.Side.Left,
            "right" => Domain.Side.Right,
            _ => null,
        };

    private static decimal? NumberOf(string text) =>
        NumberShape().IsMatch(text) ? decimal.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture) : null;

    private T? Unread<T>(string text)
        where T : struct
    {
        Remarks.Unread(Line, $"{text}; not taken");
        return null;
    }

    private string? UnreadText(string text)
    {
        Remarks.Unread(Line, $"{text}; not taken");
        return null;
    }
}
