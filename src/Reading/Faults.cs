using System.Reflection;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What reading refuses: what cannot be represented. Each has a page in <c>Faults</c>; what can be said but should not
/// be is a matter of the rules.</summary>
public static class Faults
{
    public static readonly RuleId FileUnreadable = new("file-unreadable");
    public static readonly RuleId LetterUnseen = new("letter-unseen");
    public static readonly RuleId FileMissing = new("file-missing");
    public static readonly RuleId FileNameWrong = new("file-name-wrong");
    public static readonly RuleId KeyUnknown = new("key-unknown");
    public static readonly RuleId KeyMissing = new("key-missing");
    public static readonly RuleId WordMissing = new("word-missing");
    public static readonly RuleId ValueWrong = new("value-wrong");
    public static readonly RuleId IdUnknown = new("id-unknown");
    public static readonly RuleId ConditionUnknown = new("condition-unknown");
    public static readonly RuleId AddressRefused = new("address-refused");
    public static readonly RuleId LinkBroken = new("link-broken");
    public static readonly RuleId PictureMissing = new("picture-missing");
    public static readonly RuleId PictureWithoutText = new("picture-without-text");
    public static readonly RuleId PictureTooLarge = new("picture-too-large");
    public static readonly RuleId ClipMissing = new("clip-missing");
    public static readonly RuleId ClipTooHeavy = new("clip-too-heavy");
    public static readonly RuleId ClipWithoutStill = new("clip-without-still");
    public static readonly RuleId CaptionsUnreadable = new("captions-unreadable");
    public static readonly RuleId PoseWrong = new("pose-wrong");
    public static readonly RuleId LogUnreadable = new("log-unreadable");
    public static readonly RuleId HtmlInText = new("html-in-text");
    public static readonly RuleId MarkdownNotKnown = new("markdown-not-known");
    public static readonly RuleId BraceInText = new("brace-in-text");
    public static readonly RuleId HeadingMistaken = new("heading-mistaken");

    /// <summary>In the order an author should meet them.</summary>
    public static readonly Series<RuleId> All =
    [
        FileUnreadable,
        LetterUnseen,
        FileMissing,
        FileNameWrong,
        KeyUnknown,
        KeyMissing,
        WordMissing,
        ValueWrong,
        IdUnknown,
        ConditionUnknown,
        AddressRefused,
        LinkBroken,
        PictureMissing,
        PictureWithoutText,
        PictureTooLarge,
        ClipMissing,
        ClipTooHeavy,
        ClipWithoutStill,
        CaptionsUnreadable,
        PoseWrong,
        LogUnreadable,
        HtmlInText,
        MarkdownNotKnown,
        BraceInText,
        HeadingMistaken,
    ];

    public static IEnumerable<RulePage> Pages() => All.Select(fault => RulePage.Of(fault, Assembly.GetExecutingAssembly()));
}
