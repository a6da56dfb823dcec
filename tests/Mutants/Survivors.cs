namespace Gradus.Tests.Mutants;

/// <summary>Mutants that no test notices, and why that is well. One line each: the file, the member and the change as
/// <see cref="Mutant.Name"/> has them, two blanks or more, the reason. Without a change it stands for all of the member; a
/// file or a folder alone for all that is in it.</summary>
internal sealed record Survivors(IReadOnlyList<(string Start, string Reason)> Lines)
{
    public static Survivors Read(string path) =>
        new([
            .. File.ReadLines(path)
                .Where(line => line.Length > 0 && line[0] != '#')
                .Select(line => line.Split("  ", 2, StringSplitOptions.TrimEntries))
                .Select(parts =>
                    parts is [var start, { Length: > 0 } reason]
                        ? (start, reason)
                        : throw new FormatException($"'{parts[0]}' has no reason.")
                ),
        ]);

    /// <summary>Null where none is given.</summary>
    public string? ReasonFor(Mutant mutant) =>
        Lines
            .FirstOrDefault(l =>
                mutant.Name == l.Start
                || (mutant.Name.StartsWith(l.Start, StringComparison.Ordinal) && mutant.Name[l.Start.Length] is ' ' or ':' or '/')
            )
            .Reason;
}
