using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A published site that the audit does not judge.</summary>
/// <param name="Stopped">Since when no pages are made for the client; null where an error stands in the way.</param>
internal sealed record Unjudged(ClientId Client, string Place, DateOnly? Stopped)
{
    public string Said =>
        Stopped is { } on
            ? $"{Client}: stopped on {on.Iso()}, and {Place} is still there: tell the client."
            : $"{Client}: an error stands in the way, and {Place} is still there, not judged: tell the client.";
}
