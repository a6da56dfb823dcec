using System.Collections.Concurrent;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What rules ask of a plan again for each page and for each form of a site, worked out once.</summary>
internal sealed class PlanAnswers(Plan plan)
{
    private readonly ConcurrentDictionary<(string Path, Series<ExerciseId> Exercises), PageSigns> signs = new();
    private readonly Lazy<IReadOnlyDictionary<string, (Wording Apart, Wording InOne)>> wordings = new(() => PageWording.Of(plan));
    private readonly Lazy<ILookup<string, string>> links = new(() => Planning.LinkNames.Of(plan));
    private readonly Lazy<IReadOnlySet<string>> labels = new(() => PageWording.Labels(plan));
    private readonly Lazy<IReadOnlyDictionary<string, string>> scripts = new(() => SpokenByScripts.On(plan));

    /// <inheritdoc cref="Planning.LinkNames.Of"/>
    public ILookup<string, string> LinkNames => links.Value;

    /// <inheritdoc cref="PageWording.Labels"/>
    public IReadOnlySet<string> Labels => labels.Value;

    /// <inheritdoc cref="SpokenByScripts.On"/>
    public IReadOnlyDictionary<string, string> Spoken => scripts.Value;

    /// <summary>What a page says; null where the plan has no such page.</summary>
    /// <param name="inOne">Whether it stands in one file with all others.</param>
    public Wording? WordingOf(string path, bool inOne) =>
        wordings.Value.TryGetValue(path, out var known) ? (inOne ? known.InOne : known.Apart) : null;

    /// <inheritdoc cref="Plan.SignsOn"/>
    public PageSigns SignsOn(string path, IEnumerable<ExerciseId> exercises) =>
        signs.GetOrAdd((path, exercises.ToSeries()), asked => plan.SignsOn(asked.Path, asked.Exercises));
}
