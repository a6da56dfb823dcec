namespace Gradus.Domain;

/// <summary>A clip of the practice, ready to be handed over.</summary>
/// <param name="Path">Inside the practice, with <c>/</c> between folders.</param>
/// <param name="Bytes">Without what a camera or a program noted in it.</param>
/// <param name="Sounds">Whether something can be heard.</param>
/// <param name="Still">The path of the picture that stands for it until it plays, and on paper.</param>
/// <param name="Captions">One for each language in which a file with captions lies beside it.</param>
public sealed record Clip(
    string Path,
    ReadOnlyMemory<byte> Bytes,
    int Width,
    int Height,
    bool Sounds,
    string Still,
    Series<Captions> Captions
)
{
    public Captions? CaptionsIn(string language) => Captions.FirstOrDefault(c => c.Language == language);

    /// <summary>Where captions for a clip stand: clips/lean.en.vtt beside clips/lean.mp4.</summary>
    public static string CaptionsPath(string clip, string language) => $"{clip[..clip.LastIndexOf('.')]}.{language}.vtt";
}

/// <summary>What is said in a clip, in one language, with its times.</summary>
/// <param name="Cues">In the order of their times; empty where the file could not be read, which a finding says.</param>
public sealed record Captions(string Language, Series<Cue> Cues)
{
    /// <summary>All of it as running text.</summary>
    public string Text => Spacing.Collapse(string.Join(' ', Cues.Select(c => c.Text)));

    /// <summary>As a file of captions (WebVTT, W3C), with nothing in it but times and words.</summary>
    public string Written() =>
        "WEBVTT\n" + string.Concat(Cues.Select(c => $"\n{Clock(c.From)} --> {Clock(c.Until)}\n{Escaped(c.Text)}\n"));

    private static string Clock(int moment) =>
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{moment / 3_600_000:00}:{moment / 60_000 % 60:00}:{moment / 1000 % 60:00}.{moment % 1000:000}"
        );

    private static string Escaped(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal);
}

/// <param name="From">In milliseconds from the start of the clip, inclusive.</param>
/// <param name="Until">In milliseconds, exclusive; later than <paramref name="From"/>.</param>
/// <param name="Text">One line or more, not empty.</param>
public sealed record Cue(int From, int Until, string Text);
