using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A picture or a clip as a text asks for it: <c>![The heel is down](ankle-rock.jpg)</c>.</summary>
/// <param name="Length">How much of the line is marked where something is wrong.</param>
internal sealed record MediaMention(SourceFile SourceFile, string Address, Location At, int Length)
{
    private static readonly string[] ClipEndings = [".mp4", ".webm", ".m4v", ".mov", ".avi", ".mkv", ".ogv"];

    /// <summary>Whether it is a clip by its ending, one that Gradus reads or another.</summary>
    public bool IsClip => ClipEndings.Any(ending => Address.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    public void Fault(RuleId fault, string message, string help) => SourceFile.Fault(fault, At, message, help, Length);

    public void Warn(RuleId fault, string message, string help) => SourceFile.Warn(fault, At, message, help, Length);

    /// <summary>What is to be said of it, without saying it.</summary>
    public Finding Found(RuleId fault, Level level, string message, string help) =>
        SourceFile.Found(fault, level, At, message, help, Length);
}
