using System.Collections.Frozen;

namespace Gradus.Domain;

/// <summary>A phrase of a catalogue.</summary>
/// <param name="Other">What is said where no other form fits, and of a phrase without a number.</param>
/// <param name="Forms">The other forms that it has, by kind of number; none where it has no number.</param>
public sealed record Phrase(string Other, FrozenDictionary<string, string> Forms)
{
    public Phrase(string text)
        : this(text, FrozenDictionary<string, string>.Empty) { }

    public bool IsCounted => Forms.Count > 0;

    public string In(string form) => Forms.GetValueOrDefault(form) ?? Other;
}
