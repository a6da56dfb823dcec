using System.Text.RegularExpressions;
using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed partial class TextAsksForPain : IPracticeRule
{
    [GeneratedRegex(
        @"\bthrough (the |your |any |some |a little |a bit of )*(pain|hurt)\b"
            + @"|\b(even|also) (if|when|though|where) (it|this|that) (hurts|is painful|is sore|aches)\b"
            + @"|\b(ignore|forget|overcome|accept|welcome) (the |your |any |some )*pain\b"
            + @"|\b(until|till|so that) (it|you feel it) (hurts?|is painful)\b"
            + @"|\bno pain,? no gain\b"
            + @"|\bpain (is|means) (good|fine|normal|nothing|progress|weakness|part of)\b"
            + @"|\b(it|this) (should|must|has to|is meant to|is supposed to) hurt\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Asking();

    /// <summary>With one of these before it the sentence forbids it.</summary>
    [GeneratedRegex(
        @"\b(not|never|no|don.t|doesn.t|cannot|without|nobody|stop|instead|wrong|before|less|leave)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Forbidding();

    public IEnumerable<Finding> Check(Practice practice) =>
        from text in EnglishTexts.Of(practice)
        from sentence in Readability.Of(text.Parts).Sentences
        let asking = Asking().Match(sentence.Text)
        where asking.Success && !Forbidding().IsMatch(sentence.Text[..asking.Index])
        select this.Found(
            Level.Warning,
            text.Client,
            sentence.At,
            $"{text.What} says \"{asking.Value}\"; the signs beside it tell the same client to do less, or to stop.",
            "Say what the client may feel, as 'a strong pull', and leave pain to the signs."
        );
}
