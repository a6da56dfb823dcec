namespace Gradus.Auditing;

/// <summary>One file of a site.</summary>
public sealed record WeightSeen(string Path, long Bytes);
