using Microsoft.CodeAnalysis;

namespace Gradus.Tests.Mutants;

/// <summary>One small change of the code that some test should notice.</summary>
/// <param name="Id">From 1 on, in the order of files and places.</param>
/// <param name="File">Below src, with slashes.</param>
/// <param name="Line">From 1 on.</param>
/// <param name="Column">From 1 on.</param>
/// <param name="Member">The method, property or field that it stands in.</param>
/// <param name="Kind">One of those of <see cref="MutantKinds"/>.</param>
/// <param name="Change">Before and after, on one line.</param>
/// <param name="Place">The innermost place that is passed whenever the changed code runs.</param>
internal sealed record Mutant(int Id, string File, int Line, int Column, string Member, string Kind, string Change, int Place)
{
    /// <summary>What the list of survivors calls it: no line, so that it stays true when code above it grows.</summary>
    public string Name => $"{File} {Member}: {Change}";

    /// <summary>Tells it from all others as long as the code is as it is.</summary>
    public string Spot => $"{Line}:{Column} {Name}";

    public string Folder => Path.GetDirectoryName(File)?.Replace('\\', '/') ?? "";
}

/// <summary>What one kind makes of a node of the tree.</summary>
/// <param name="Make">Is given the node as it stands in the tree that is built.</param>
internal sealed record Change(string Kind, Func<SyntaxNode, SyntaxNode> Make);
