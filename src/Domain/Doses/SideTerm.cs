namespace Gradus.Domain;

/// <summary>Which side or sides the work is for.</summary>
public abstract record SideTerm
{
    private SideTerm() { }

    /// <summary>All sets of one side, then all of the other.</summary>
    public sealed record Each : SideTerm;

    /// <summary>The sides take turns, set by set.</summary>
    public sealed record Alternate : SideTerm;

    /// <summary>Both at once.</summary>
    public sealed record Both : SideTerm;

    /// <param name="Name">left, right, or a side named by the sport, in small letters, with single spaces.</param>
    public sealed record On(string Name) : SideTerm
    {
        public string Name { get; } = DoseBounds.CheckedText(Name, nameof(Name));
    }
}
