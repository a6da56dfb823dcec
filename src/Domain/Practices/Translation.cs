namespace Gradus.Domain;

/// <summary>What the coach wrote of a caution or an exercise in another language, from <c>ID.LANG.md</c> beside
/// <c>ID.md</c>.</summary>
/// <param name="Language">BCP 47, two letters.</param>
public abstract record Translation(string Language, string Title, Location At)
{
    private const int LanguageLength = 2;

    public sealed record OfCaution(CautionId Caution, string Language, string Title, Prose Body, Location At)
        : Translation(Language, Title, At);

    public sealed record OfExercise(ExerciseId Exercise, string Language, string Title, ExerciseText Text, Location At)
        : Translation(Language, Title, At);

    /// <summary>Where the translation of a file stands: of <c>cautions/cramp.md</c> <c>cautions/cramp.en.md</c>.</summary>
    public static string PathOf(string file, string language) => $"{file[..^".md".Length]}.{language}.md";

    /// <summary>The file that a file translates, as its name says; null where it is the name of no translation.</summary>
    public static string? FileOf(string path) =>
        path.EndsWith(".md", StringComparison.Ordinal) && IsName(path[..^".md".Length])
            ? path[..^(LanguageLength + 1 + ".md".Length)] + ".md"
            : null;

    /// <summary>Whether a file's name, without its ending, is that of a translation.</summary>
    public static bool IsName(string name) =>
        name.Length > LanguageLength + 1 && name[^(LanguageLength + 1)] == '.' && IsLanguage(name[^LanguageLength..]);

    /// <summary>Whether a text has the shape of a BCP 47 language of two letters.</summary>
    public static bool IsLanguage(string text) => text.Length == LanguageLength && text.All(char.IsAsciiLetterLower);
}
