using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>A place in the guided session that its script fills: the first element with that name in <c>data-fill</c>.</summary>
/// <param name="Name">The value of <c>data-fill</c>.</param>
/// <param name="Panel">The panel that it stands in.</param>
public sealed record GuidePlace(string Name, string Panel)
{
    /// <summary>What somebody follows while a step runs and what they are told of it, at the end and where it is stopped. Without
    /// one of these the page says less than the coach wrote: which side, how much longer, what was left out.</summary>
    public static readonly Series<GuidePlace> All =
    [
        .. Of("play", "place", "ends", "now", "side", "what", "told", "digits", "effort", "breath-words", "keep-breathing"),
        .. Of("play", "detail", "next", "left-out", "cue", "pictures", "doing", "how", "signs", "how-body", "said"),
        .. Of("ready", "left-out"),
        .. Of("end", "did", "left-out", "ask-first", "kept"),
        .. Of("alarm", "alarm-kept"),
    ];

    /// <summary>Those of <see cref="All"/> that a screen reader says together as soon as a step begins: they stand in one element
    /// with the role of a status.</summary>
    public static readonly Series<string> Said = ["side", "what", "told"];

    private static IEnumerable<GuidePlace> Of(string panel, params IEnumerable<string> names) =>
        names.Select(name => new GuidePlace(name, panel));
}
