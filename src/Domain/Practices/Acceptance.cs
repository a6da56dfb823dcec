namespace Gradus.Domain;

/// <summary>A warning that a coach has looked at and lets stand, from <c>accepted.yaml</c>.</summary>
/// <param name="File">The file the warning is about, as findings name it.</param>
/// <param name="Saw">What the finding said when it was looked at: of a client's finding it holds for no other. Null for findings
/// about no client.</param>
/// <param name="By">Who answers for it.</param>
/// <param name="Until">The last day it holds.</param>
public sealed record Acceptance(RuleId Rule, string File, string? Saw, string Because, string By, DateOnly Until, Location At);
