namespace Gradus.Domain;

/// <summary>Where something is written: a file of the practice or a page of a site, with <c>/</c> between folders. Lines and
/// columns count from 1; a line of 0 means the file as a whole.</summary>
public sealed record Location(string File, int Line, int Column) : IComparable<Location>
{
    public static Location Whole(string file) => new(file, 0, 0);

    public int CompareTo(Location? other)
    {
        if (other is null)
            return 1;
        var byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
            return byFile;
        return Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);
    }

    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";

    public static bool operator <(Location left, Location right) => left.CompareTo(right) < 0;

    public static bool operator >(Location left, Location right) => left.CompareTo(right) > 0;

    public static bool operator <=(Location left, Location right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Location left, Location right) => left.CompareTo(right) >= 0;
}
