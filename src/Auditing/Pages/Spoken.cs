using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What a page says, held against what the plan has it say.</summary>
/// <param name="Planned">Each text of the plan that the page has, in the page's order, with the number of its line.</param>
/// <param name="Strange">The lines that the plan does not have, or not there.</param>
/// <param name="Missing">The texts that must be there and are not.</param>
internal sealed record Spoken(
    Series<(int Line, Wording.Line Text)> Planned,
    Series<StrangeLine> Strange,
    Series<MissingText> Missing
)
{
    public static readonly Spoken Nothing = new([], [], []);
}

/// <param name="Behind">The line before it that is planned; null where none is.</param>
internal sealed record StrangeLine(TextLine Line, TextLine? Behind);

/// <param name="Behind">The line that it should stand behind; null for the beginning of the page.</param>
internal sealed record MissingText(Wording.Line Text, TextLine? Behind);
