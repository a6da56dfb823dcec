using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a page tells a browser and a screen reader beside its text.</summary>
/// <param name="Language">As the root element says it; null where it says none.</param>
/// <param name="Title">With single spaces; empty where there is none.</param>
/// <param name="Headings">Those that a screen reader gets, in order.</param>
/// <param name="Nameless">What a screen reader comes upon and has no name for.</param>
/// <param name="Written">Scripts and styles written into the page itself.</param>
public sealed record PageShape(string? Language, string Title, Series<HeadingSeen> Headings, Series<Oddity> Nameless, Series<Oddity> Written);

/// <param name="Level">1 to 6.</param>
public sealed record HeadingSeen(int Level, string Text, Location At);

/// <param name="What">As it is called in a sentence: "a button".</param>
public sealed record Oddity(string What, Location At);
