using System.Globalization;

namespace Gradus.Reading;

/// <summary>A whole number in a line, however long.</summary>
internal sealed record WrittenNumber(string Digits, LinePlace Place)
{
    private const int MostDigits = 9;

    /// <summary>Of more than nine digits one thousand million, which is beyond every bound.</summary>
    public long Value => Digits.Length > MostDigits ? 1_000_000_000 : long.Parse(Digits, CultureInfo.InvariantCulture);

    /// <summary>For a message: cut where it is very long.</summary>
    public override string ToString() => Digits.Length > MostDigits ? Digits[..MostDigits] + "…" : Digits;
}

/// <summary>One number or two with a dash between them, in any order.</summary>
internal sealed record WrittenRange(WrittenNumber First, WrittenNumber Last, LinePlace Place)
{
    public bool IsSingle => First == Last;

    public bool IsOrdered => First.Value <= Last.Value;

    public override string ToString() => IsSingle ? $"{First}" : $"{First}-{Last}";
}
