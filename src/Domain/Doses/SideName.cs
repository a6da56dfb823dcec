namespace Gradus.Domain;

/// <summary>A side as a dose or a programme names it.</summary>
public abstract record SideName
{
    private SideName() { }

    /// <summary>As a dose line writes it, in small letters.</summary>
    public abstract string Word { get; }

    public sealed override string ToString() => Word;

    /// <param name="word">In small letters, with single spaces, no comma.</param>
    public static SideName Of(string word) =>
        word switch
        {
            "left" => new Body(Side.Left),
            "right" => new Body(Side.Right),
            _ => new Role(word),
        };

    /// <summary>A side of the body.</summary>
    public sealed record Body(Side Side) : SideName
    {
        public override string Word => Side.Word();
    }

    /// <summary>A side named by the sport, such as <c>front leg</c>.</summary>
    public sealed record Role(string Name) : SideName
    {
        public string Name { get; } = DoseBounds.CheckedText(Name, nameof(Name));

        public override string Word => Name;
    }
}
