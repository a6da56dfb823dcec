namespace Gradus.Planning;

/// <summary>A telephone number as a link has it.</summary>
public static class PhoneAddress
{
    public static string Of(string number) => "tel:" + Digits(number);

    /// <summary>The digits, and the plus.</summary>
    public static string Digits(string number) => string.Concat(number.Where(c => char.IsAsciiDigit(c) || c == '+'));
}
