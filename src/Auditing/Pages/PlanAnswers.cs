using System.Collections.Concurrent;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What rules ask of a plan again for each page and for each form of a site, worked out once.</summary>
internal sealed class PlanAnswers(Plan plan)
{
    private readonly ConcurrentDictionary<(string Path, Series<ExerciseId> Exercises), PageSigns> signs = new();
    private readonly Lazy<ILookup<string, string>> links = new(() => Planning.LinkNames.Of(plan));
    private readonly Lazy<IReadOnlySet<string>> labels = new(() => PageWording.Labels(plan));
    private readonly Lazy<IReadOnlyDictionary<string, string>> scripts = new(() => SpokenByScripts.On(plan));

    /// <inheritdoc cref="Planning.LinkNames.Of"/>
    public ILookup<string, string> LinkNames => links.Value;

    /// <inheritdoc cref="PageWording.Labels"/>
    public IReadOnlySet<string> Labels => labels.Value;

    /// <inheritdoc cref="SpokenByScripts.On"/>
    public IReadOnlyDictionary<string, string> Spoken => scripts.Value;

    /// <inheritdoc cref="Plan.SignsOn"/>
    public PageSigns SignsOn(string path, IEnumerable<ExerciseId> exercises) =>
        signs.GetOrAdd((path, exercises.ToSeries()), asked => plan.SignsOn(asked.Path, asked.Exercises));
}
