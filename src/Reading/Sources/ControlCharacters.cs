namespace Gradus.Reading;

/// <summary>Characters that are no text: a page cannot show them and HTML does not allow them.</summary>
internal static class ControlCharacters
{
    public static bool Contains(char c) => (char.IsControl(c) && c is not ('\t' or '\n' or '\r')) || c is '\uFFFE' or '\uFFFF';
}
