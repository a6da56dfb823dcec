namespace Gradus.Domain;

/// <summary>A warning that a coach has looked at and lets stand, from <c>accepted.yaml</c>.</summary>
/// <param name="File">The file the warning is about, as findings name it.</param>
/// <param name="By">Who answers for it.</param>
/// <param name="Until">The last day it holds.</param>
public sealed record Acceptance(RuleId Rule, string File, string Because, string By, DateOnly Until, Location At);
