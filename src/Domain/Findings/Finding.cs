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
    /// <summary>The id of a rule from the name of its class: <c>DoseOutsideEnvelope</c> is
    /// <c>dose-outside-envelope</c>.</summary>
    public static RuleId Of(Type rule) => new(Kebab.Of(rule.Name));

    public override string ToString() => Text;
}

/// <summary>One thing to say to the coach.</summary>
/// <param name="Client">The one client it is about; null where it is about a file that several may share.</param>
/// <param name="Message">What is wrong, in the author's words, one sentence.</param>
/// <param name="Help">The one thing to do about it.</param>
/// <param name="Length">How many characters the caret marks, at least 1.</param>
public sealed record Finding(
    RuleId Rule,
    Level Level,
    ClientId? Client,
    Location At,
    string Message,
    string Help,
    int Length = 1
);
