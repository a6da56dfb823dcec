namespace Gradus.Domain;

/// <summary>Which clients a file of the practice touches: an error in it blocks them. What cannot be told touches
/// everybody.</summary>
public sealed class Reach
{
    private readonly Dictionary<string, HashSet<string>> files = new(StringComparer.Ordinal);
    private readonly HashSet<string> readCautions;

    /// <param name="uses">The files that each client's plan is made from, beside the client's own folder.</param>
    /// <param name="cautions">The caution files that could be bound. Any other might attach to anything, so it touches everybody;
    /// the translation of one that could be bound attaches to nothing by itself.</param>
    public Reach(IEnumerable<(ClientId Client, string File)> uses, IEnumerable<string> cautions)
    {
        readCautions = cautions.ToHashSet(StringComparer.Ordinal);
        foreach (var (client, file) in uses)
        {
            if (!files.TryGetValue(file, out var clients))
                files[file] = clients = new(StringComparer.Ordinal);
            clients.Add(client.Text);
        }
    }

    /// <summary>The files whose errors concern only those who use them.</summary>
    public static bool IsShared(string file) =>
        file.StartsWith("exercises/", StringComparison.Ordinal)
        || file.StartsWith("cautions/", StringComparison.Ordinal)
        || file.StartsWith("sports/", StringComparison.Ordinal)
        || file.StartsWith("programmes/", StringComparison.Ordinal)
        || file.StartsWith("words/", StringComparison.Ordinal);

    /// <summary>The name of the client in whose folder a file lies; null where it lies in none.</summary>
    public static string? OwnerOf(string file) => file.Split('/') is ["clients", var owner, _, ..] ? owner : null;

    public bool Touches(string file, ClientId client)
    {
        if (file.StartsWith("clients/", StringComparison.Ordinal))
            return OwnerOf(file) == client.Text;
        if (Group.IsOf(file))
            return false;
        if (file.StartsWith("cautions/", StringComparison.Ordinal) && !readCautions.Contains(Translation.FileOf(file) ?? file))
            return true;
        return !IsShared(file) || (files.TryGetValue(file, out var clients) && clients.Contains(client.Text));
    }

    /// <summary>The reach of the files of a practice that could be bound.</summary>
    public static Reach Of(Practice practice) =>
        new(
            practice.Clients.SelectMany(client => FilesOf(practice, client).Select(file => (client.Id, file))),
            practice.Cautions.Select(c => $"cautions/{c.Id}.md")
        );

    /// <summary>Translations into the client's language too, whether or not they could be bound, or are there.</summary>
    private static IEnumerable<string> FilesOf(Practice practice, Client client) =>
        client.Language == practice.Card.Language
            ? WrittenFor(practice, client)
            : WrittenFor(practice, client)
                .SelectMany(file =>
                    file.EndsWith(".md", StringComparison.Ordinal)
                        ? [file, Translation.PathOf(file, client.Language)]
                        : new[] { file }
                );

    private static IEnumerable<string> WrittenFor(Practice practice, Client client)
    {
        yield return $"words/{client.Language}.yaml";
        if (client.Programme.From is { } from)
            yield return SharedProgramme.PathOf(from.Programme.Value);
        foreach (var played in client.Sports)
            yield return $"sports/{played.Sport.Value}.yaml";
        foreach (
            var exercise in client
                .Programme.AllSessions.SelectMany(s => s.Do)
                .SelectMany(u => ExercisesOf(practice, u))
                .Distinct()
        )
        {
            yield return $"exercises/{exercise}.md";
            if (practice.Find(exercise) is not { } found)
                continue;
            foreach (
                var clip in ClipsIn(found.Text)
                    .Concat(practice.Find(exercise, client.Language) is { } said ? ClipsIn(said.Text) : [])
            )
                yield return Clip.CaptionsPath(clip, client.Language);
            foreach (var caution in practice.CautionsOf(found, client))
                yield return $"cautions/{caution}.md";
        }
    }

    private static IEnumerable<string> ClipsIn(ExerciseText text) =>
        text.Instructions.SelectMany(p => p.Inlines()).OfType<Inline.Clip>().Select(c => c.Path);

    private static IEnumerable<ExerciseId> ExercisesOf(Practice practice, ProgrammeUse use)
    {
        yield return use.Exercise.Value;
        foreach (var version in use.Versions)
        {
            var named = practice.Find(use.Exercise.Value);
            if (named?.Named(version.Version) is { } other)
                yield return other.Value;
        }
    }
}
