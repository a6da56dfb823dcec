using Gradus.Domain;

namespace Gradus.Rendering;

/// <param name="Policy">The content of the page's Content-Security-Policy, which allows the style and the script as they are and
/// nothing else.</param>
/// <param name="Style">The whole element.</param>
/// <param name="Script">The whole element; it finds the form by its id, and everything in it by <c>data-</c> attributes.</param>
/// <param name="File">The name of the file that the script saves.</param>
/// <param name="LeftOpen">What is said when questions are open: a line for each number of them, from one to all.</param>
internal sealed record IntakeSheetView(
    string Language,
    string Direction,
    string Policy,
    Html Style,
    Html Script,
    string File,
    string Practice,
    string Coach,
    string Email,
    string Phone,
    string PhoneLink,
    string WrittenBy,
    string Purpose,
    string Privacy,
    string Send,
    string Print,
    string HandOver,
    Series<IntakeQuestionView> Questions,
    PlacesView Places,
    string Saved,
    string LeftOpen
);

/// <param name="Number">From 1.</param>
/// <param name="Sided">Whether a yes may be for one side.</param>
/// <param name="Pain">Whether it is answered with what hurts, how much and where.</param>
internal sealed record IntakeQuestionView(int Number, string Id, string Question, bool Sided, bool Pain);

/// <summary>What a question about pain is answered with.</summary>
/// <param name="Rows">The name of each line for one place.</param>
internal sealed record PlacesView(Series<string> Rows, Series<string> Levels, Series<RegionView> Regions, string Sentence);

/// <param name="Name">As an answers file has it.</param>
internal sealed record RegionView(string Name, string Words, bool Sided);
