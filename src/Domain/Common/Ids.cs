using System.Text.RegularExpressions;

namespace Gradus.Domain;

/// <summary>The shape every id of a practice has: <c>^[a-z][a-z0-9-]{0,63}$</c>, and no name that a system keeps for a
/// device.</summary>
public static partial class Id
{
    private static readonly HashSet<string> Devices = new(StringComparer.Ordinal)
    {
        "con",
        "prn",
        "aux",
        "nul",
        "com1",
        "com2",
        "com3",
        "com4",
        "com5",
        "com6",
        "com7",
        "com8",
        "com9",
        "lpt1",
        "lpt2",
        "lpt3",
        "lpt4",
        "lpt5",
        "lpt6",
        "lpt7",
        "lpt8",
        "lpt9",
    };

    [GeneratedRegex("^[a-z][a-z0-9-]{0,63}\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    public static bool IsValid(string text) => Shape().IsMatch(text) && !Devices.Contains(text);

    internal static string Checked(string text) =>
        IsValid(text) ? text : throw new ArgumentException($"'{text}' is no id.", nameof(text));
}

public sealed record ExerciseId
{
    public ExerciseId(string text) => Text = Id.Checked(text);

    public string Text { get; }

    public override string ToString() => Text;
}

public sealed record CautionId
{
    public CautionId(string text) => Text = Id.Checked(text);

    public string Text { get; }

    public override string ToString() => Text;
}

public sealed record ConditionId
{
    public ConditionId(string text) => Text = Id.Checked(text);

    public string Text { get; }

    public override string ToString() => Text;
}

public sealed record SportId
{
    public SportId(string text) => Text = Id.Checked(text);

    public string Text { get; }

    public override string ToString() => Text;
}

public sealed record ClientId
{
    public ClientId(string text) => Text = Id.Checked(text);

    public string Text { get; }

    public override string ToString() => Text;
}
