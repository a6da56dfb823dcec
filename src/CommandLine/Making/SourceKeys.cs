using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>What a client's training, findings and plan come from, as one hash: every byte that was read of the practice, but of
/// the exercises only those that were asked for, and of other clients nothing.</summary>
internal sealed class SourceKeys
{
    private const string ExerciseFolder = "exercises/";

    private readonly string shared;
    private readonly string everything;
    private readonly ILookup<string, string> exercises;
    private readonly ILookup<string, string> clients;
    private readonly Lazy<string> errors;

    /// <param name="folder">That the practice was read from.</param>
    public SourceKeys(SourceFolder folder, Practice practice)
    {
        errors = new(() => string.Join('\n', practice.OwnErrors.All));
        var lines = folder
            .Paths.Where(path => !Group.IsOf(path))
            .Select(path => (Path: path, Line: $"{path} {folder.HashOf(path)}"))
            .ToArray();
        var links = folder.Links.Select(link => $"{link} ->").ToArray();
        exercises = lines.Where(l => IsExercise(l.Path)).ToLookup(l => ExerciseOf(l.Path), l => l.Line, StringComparer.Ordinal);
        clients = lines
            .Where(l => Reach.OwnerOf(l.Path) is not null)
            .ToLookup(l => Reach.OwnerOf(l.Path) ?? "", l => l.Line, StringComparer.Ordinal);
        // Which exercises there are is for everybody: a text may name any of them.
        shared = TextHash.Of(
            lines
                .Where(l => Reach.OwnerOf(l.Path) is null)
                .Select(l => IsExercise(l.Path) ? l.Path : l.Line)
                .Concat(links)
                .Concat(practice.NamedConditions.Select(c => c.Text).Order(StringComparer.Ordinal))
                .Prepend(ProgramVersion.Hash)
        );
        everything = TextHash.Of(lines.Select(l => l.Line).Concat(links));
    }

    /// <param name="asked">What was asked of the practice on the way.</param>
    public string Of(ClientId client, Asked asked) =>
        TextHash.Whole(
            string.Join(
                '\n',
                clients[client.Text]
                    .Concat(asked.Exercises.SelectMany(exercise => exercises[exercise.Text]))
                    .Append(asked.IsOfErrors ? errors.Value : "")
                    .Append(asked.IsOfEverything ? everything : "")
                    .Append(shared)
            )
        );

    /// <summary>A text of an exercise, in whatever language.</summary>
    private static bool IsExercise(string path) =>
        path.StartsWith(ExerciseFolder, StringComparison.Ordinal)
        && path.EndsWith(".md", StringComparison.Ordinal)
        && !path[ExerciseFolder.Length..].Contains('/', StringComparison.Ordinal);

    private static string ExerciseOf(string path) => path[ExerciseFolder.Length..].Split('.')[0];
}
