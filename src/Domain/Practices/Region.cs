namespace Gradus.Domain;

/// <summary>A part of the body that a condition concerns or an exercise loads. Limbs' regions have a left and a right.</summary>
public sealed record Region
{
    public static readonly Series<Region> All =
    [
        new("head", false, "neck"),
        new("neck", false),
        new("upper-back", false),
        new("lower-back", false),
        new("chest", false),
        new("ribs", false, "upper-back", "chest"),
        new("belly", false, "lower-back"),
        new("whole body", false),
        new("shoulder", true),
        new("elbow", true),
        new("wrist", true),
        new("hand", true),
        new("groin", true, "hip"),
        new("hip", true),
        new("thigh", true, "hip", "knee"),
        new("knee", true),
        new("calf", true, "ankle", "foot"),
        new("ankle", true),
        new("foot", true),
    ];

    private readonly string[] beside;

    private Region(string name, bool sided, params string[] beside) => (Name, IsSided, this.beside) = (name, sided, beside);

    public string Name { get; }

    public bool IsSided { get; }

    /// <summary>Whether work for that region works this one too: it is the same, or muscles of this one move it.</summary>
    public bool IsLoadedWith(Region other) => this == other || beside.Contains(other.Name, StringComparer.Ordinal);

    /// <summary>Neck, upper or lower back.</summary>
    public bool IsSpine => Name is "neck" or "upper-back" or "lower-back";

    public static Region? Find(string name) => All.FirstOrDefault(r => string.Equals(r.Name, name, StringComparison.Ordinal));

    /// <summary>"left knee", "knee", "neck", as a coach writes it.</summary>
    public string On(Side? side) => side is { } one ? $"{one.Word()} {Name}" : Name;

    public override string ToString() => Name;
}

/// <summary>A region that an exercise loads: on the side at work, or with <paramref name="Other"/> on the opposite one.</summary>
public sealed record LoadedRegion(Region Region, bool Other);
