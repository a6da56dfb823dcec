namespace Gradus.Domain;

public static class Kebab
{
    /// <summary>"whole body" as <c>whole-body</c>.</summary>
    public static string OfWords(string words) => words.Replace(' ', '-');

    /// <summary><c>DoseOutsideEnvelope</c> as <c>dose-outside-envelope</c>.</summary>
    public static string Of(string name) =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i == 0 ? "" : "-") + char.ToLowerInvariant(c) : c.ToString()));
}
