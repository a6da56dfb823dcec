using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What of a pain concerns the coach, worst first. The bands were tested in tendons and a few joint troubles only
/// (Thomeé
/// 1997, second-hand; Silbernagel 2007, Am J Sports Med 35:897-906, abstract seen; the bands not seen in it).</summary>
public enum PainKind
{
    /// <summary>A sign that cannot wait, or any pain in the chest.</summary>
    Now,

    /// <summary>Something snapped, is hot or swollen, is numb or does not bear weight: a clinician on the same day.</summary>
    SameDay,

    /// <summary>More than the practice goes on with while it was done, or stopped for sharp pain or giving way.</summary>
    Stopped,

    /// <summary>More than the practice trains with, before it or on the morning after, though no other row says so.</summary>
    AboveStop,

    /// <summary>Worse on the morning after than before, by the rule of 24 hours.</summary>
    NextMorning,

    /// <summary>The median of the mornings is 2 or more above that of two weeks before. Two points or 30 % is the smallest change
    /// that people call much better (Farrar 2001, Pain 94:149-58, seen: for less pain in chronic pain; for more: common practice,
    /// no source).</summary>
    Rising,

    /// <summary>More than the practice says to ease off at, in two sessions or more of the last 14 days, of which no other row
    /// tells. Once is what a page answers by itself; again is the coach's (common practice, no source).</summary>
    AboveEase,

    /// <summary>In two thirds or more of at least 6 entries of 14 days (common practice, no source).</summary>
    Lasting,
}

/// <summary>What follows from how often it was told.</summary>
public enum PainStep
{
    First,

    /// <summary>Worse on a morning for the second time: what loads the place is left out for 7 days.</summary>
    Out,

    /// <summary>A clinician before what loads the place is done again.</summary>
    Clinician,
}

/// <summary>Pain at one place that came back.</summary>
/// <param name="Entry">The one that tells of it; of pain that rises or lasts the latest one.</param>
/// <param name="Level">The number that tells of it, 0 to 10; null where none was said.</param>
/// <param name="Stopped">The exercises that were ended for it.</param>
public sealed record ReturnedPain(
    PainKind Kind,
    PainPlace Place,
    LogEntry Entry,
    int? Level,
    Series<ExerciseId> Stopped,
    PainStep Step
)
{
    public DateOnly Day => Entry.Day;

    /// <summary>Whether what the client answered about pain at the moment is overtaken by it.</summary>
    public bool Overtakes => Kind <= PainKind.NextMorning;
}
