using System.Text;

namespace Gradus.Reading;

/// <summary>The bytes of a log as text.</summary>
/// <param name="Encoding">In which more can be written behind them.</param>
/// <param name="IsGuessed">Whether they are not what a log is written in, so that letters beyond ASCII may be others.</param>
internal sealed record LogText(string Text, Encoding Encoding, bool IsGuessed)
{
    /// <summary>The most that is read, in bytes, inclusive.</summary>
    public const int Most = 4 * 1024 * 1024;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>UTF-8 with or without a mark, UTF-16 with one; anything else letter by letter.</summary>
    public static LogText Of(ReadOnlySpan<byte> bytes) =>
        bytes switch
        {
            [0xFF, 0xFE, .. var rest] => new(Encoding.Unicode.GetString(rest), Encoding.Unicode, false),
            [0xFE, 0xFF, .. var rest] => new(Encoding.BigEndianUnicode.GetString(rest), Encoding.BigEndianUnicode, false),
            [0xEF, 0xBB, 0xBF, .. var rest] => OfUtf8(rest),
            _ => OfUtf8(bytes),
        };

    private static LogText OfUtf8(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new(Utf8.GetString(bytes), Utf8, false);
        }
        catch (DecoderFallbackException)
        {
            return new(Encoding.Latin1.GetString(bytes), Encoding.Latin1, true);
        }
    }
}
