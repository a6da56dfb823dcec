namespace Gradus.Domain;

/// <summary>A part of the body that a condition concerns or an exercise loads. Limbs' regions have a left and a right.</summary>
public sealed record Region
{
    public static readonly Series<Region> All =
    [
        new("neck", false),
        new("upper-back", false),
        new("lower-back", false),
        new("chest", false),
        new("whole body", false),
        new("shoulder", true),
        new("elbow", true),
        new("wrist", true),
        new("hand", true),
        new("hip", true),
        new("knee", true),
        new("ankle", true),
        new("foot", true),
    ];

    private Region(string name, bool sided) => (Name, IsSided) = (name, sided);

    public string Name { get; }

    public bool IsSided { get; }

    public static Region? Find(string name) => All.FirstOrDefault(r => string.Equals(r.Name, name, StringComparison.Ordinal));

    public override string ToString() => Name;
}

/// <summary>A region that an exercise loads: on the side at work, or with <paramref name="Other"/> on the opposite one.</summary>
public sealed record LoadedRegion(Region Region, bool Other);
