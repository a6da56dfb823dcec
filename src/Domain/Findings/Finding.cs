using System.Collections.Concurrent;

namespace Gradus.Domain;

/// <summary>How much a finding weighs. An error blocks the clients it touches, a warning asks somebody to look, a note is
/// tidiness.</summary>
public enum Level
{
    Error,
    Warning,
    Note,
}

/// <summary>The name of a rule, which is the name of the fault: lower-case words joined by hyphens.</summary>
public sealed record RuleId(string Text)
{
    // Each finding asks for that of its rule, and there are many more findings than rules.
    private static readonly ConcurrentDictionary<Type, RuleId> OfClasses = new();

    /// <summary>The id of a rule from the name of its class: <c>DoseOutsideEnvelope</c> is
    /// <c>dose-outside-envelope</c>.</summary>
    public static RuleId Of(Type rule) => OfClasses.GetOrAdd(rule, type => new(Kebab.Of(type.Name)));

    public override string ToString() => Text;
}

/// <summary>One thing to say to the coach.</summary>
/// <param name="Client">The one client it is about; null where it is about a file that several may share.</param>
/// <param name="Message">What is wrong, in the author's words, one sentence.</param>
/// <param name="Help">The one thing to do about it.</param>
/// <param name="Length">How many characters the caret marks, at least 1.</param>
public sealed record Finding(RuleId Rule, Level Level, ClientId? Client, Location At, string Message, string Help, int Length = 1)
{
    /// <summary>How many places have it, this one among them.</summary>
    public int Places { get; init; } = 1;

    /// <summary>Everybody whom it touches, where it is said once for several; otherwise nobody.</summary>
    public Series<ClientId> Clients { get; init; } = [];

    /// <summary>What is wrong, in how many places, for whom.</summary>
    public string Sentence =>
        Message
        + Places switch
        {
            1 => "",
            2 => " One more place has the same.",
            _ => FormattableString.Invariant($" {Places - 1} more places have the same."),
        }
        + (
            Clients.Count == 0
                ? ""
                : FormattableString.Invariant(
                    $" It touches {Clients.Count} clients: {string.Join(", ", Clients.Select(c => c.Text))}."
                )
        );
}
