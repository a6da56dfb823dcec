using System.Reflection;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The tables that come with Gradus, built into this room and read like any other file.</summary>
internal static class Embedded
{
    public static SourceFile SourceFile(string name, Findings findings) =>
        Reading.SourceFile.Of(SourceFolder.Of([new(name, BuiltIn.Bytes(Assembly.GetExecutingAssembly(), name))]), name, findings)
        ?? throw new InvalidOperationException($"The built-in file '{name}' is no text.");
}
