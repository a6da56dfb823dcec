namespace Gradus.Domain;

/// <summary>One thing that is other in one edition than in another.</summary>
public abstract record EditionChange
{
    private EditionChange() { }

    /// <summary>The programme has another title, so it is another programme.</summary>
    public sealed record Titled(string Before, string After) : EditionChange;

    /// <summary>It begins on another day, so it is another programme.</summary>
    public sealed record Begins(DateOnly Before, DateOnly After) : EditionChange;

    /// <summary>It has another number of weeks.</summary>
    public sealed record Lasts(int Before, int After) : EditionChange;

    /// <summary>The client pauses on other days, so that weeks shift.</summary>
    public sealed record Pauses(Series<Pause> Before, Series<Pause> After) : EditionChange;

    public sealed record SessionIn(string Session) : EditionChange;

    public sealed record SessionOut(string Session) : EditionChange;

    /// <summary>A session is called otherwise.</summary>
    public sealed record SessionNamed(string Before, string Session) : EditionChange;

    /// <summary>A session is done on other days, or instead of another one.</summary>
    public sealed record Days(string Session, string Before, string After) : EditionChange;

    /// <summary>The same exercises in another order.</summary>
    public sealed record Order(string Session) : EditionChange;

    public sealed record ExerciseIn(string Session, EditionExercise Exercise) : EditionChange;

    public sealed record ExerciseOut(string Session, EditionExercise Exercise) : EditionChange;

    /// <summary>In weeks that both have, another dose.</summary>
    public sealed record Doses(string Session, EditionExercise Exercise, Series<Changed> In) : EditionChange;

    /// <summary>In weeks that both have, another side.</summary>
    public sealed record Sides(string Session, EditionExercise Exercise, Series<Changed> In) : EditionChange;

    /// <summary>It is done in other weeks of those that both have.</summary>
    /// <param name="Before">In rising order.</param>
    public sealed record DoneIn(string Session, EditionExercise Exercise, Series<int> Before, Series<int> After) : EditionChange;

    /// <summary>It belongs to other rounds.</summary>
    public sealed record Rounds(string Session, EditionExercise Exercise, string Before, string After) : EditionChange;

    /// <summary>It is kept on a day with little time, or no longer.</summary>
    public sealed record Kept(string Session, EditionExercise Exercise, bool IsKept) : EditionChange;

    /// <summary>Other things must be true before the client goes on.</summary>
    public sealed record MoveOn(string Session, EditionExercise Exercise) : EditionChange;

    /// <summary>What the coach wrote of an exercise, or what it asks of a body.</summary>
    public sealed record Words(EditionExercise Exercise) : EditionChange;

    public sealed record CautionIn(EditionCaution Caution) : EditionChange;

    public sealed record CautionOut(EditionCaution Caution) : EditionChange;

    /// <summary>Its title, its text or its kind.</summary>
    /// <param name="Was">What it was before; the same kind where only its words are other.</param>
    public sealed record CautionWords(EditionCaution Caution, CautionKind Was) : EditionChange;

    /// <summary>It goes for other exercises of those that both have.</summary>
    public sealed record CautionFor(EditionCaution Caution, Series<EditionExercise> Added, Series<EditionExercise> Removed)
        : EditionChange;

    public sealed record ClearanceIn(string Clearance) : EditionChange;

    public sealed record ClearanceOut(string Clearance) : EditionChange;

    public sealed record RestrictionIn(string Restriction) : EditionChange;

    public sealed record RestrictionOut(string Restriction) : EditionChange;

    /// <summary>Something else that stands on the pages.</summary>
    /// <param name="Name">As the edition names it: "letter".</param>
    public sealed record Other(string Name) : EditionChange;
}

/// <summary>Weeks in a row in which the same is other.</summary>
public sealed record Changed(int From, int To, string Before, string After);
