namespace Gradus.CommandLine;

/// <summary>A file to begin with.</summary>
/// <param name="Path">Inside the folder it is for, with <c>/</c> between folders.</param>
internal sealed record StarterFile(string Path, string Text);
