using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A practice as it was read at one moment, with the theme of that moment.</summary>
/// <param name="Found">By reading alone.</param>
internal sealed record ReadState(SourceFolder Folder, PracticeReading Reading, Series<Finding> Found, Theme Theme, DateOnly Today)
{
    private readonly Dictionary<ClientId, Client> bound = (Reading.Practice?.Clients ?? []).ToDictionary(c => c.Id);

    /// <summary>Whether every file could be read; what is unused is judged only then.</summary>
    public bool IsWhole { get; } = Found.All(f => f.Level != Level.Error);

    /// <summary>Null where the files could not be read.</summary>
    public Client? Bound(ClientId id) => bound.GetValueOrDefault(id);

    public DateOnly? StoppedOn(ClientId id) => Bound(id) is { } client && client.HasStopped(Today) ? client.Stopped?.On : null;

    /// <summary>The plan of one client, with nothing worked out that is for others: what may stand in the way of the pages is
    /// asked of the client and of the files that the client's plan is made from. The whole audit comes behind it. Null where
    /// something does stand in the way.</summary>
    public Plan? FirstPlanOf(ClientId id)
    {
        if (Reading.Practice is not { } practice || Bound(id) is not { } client)
            return null;
        var training = Training.Of(practice, client);
        var alone = Alone(practice, client);
        var findings = new Findings();
        findings.AddRange(Found);
        findings.AddRange(RuleBook.CheckShared(alone, whole: false));
        findings.AddRange(RuleBook.Check(practice, client, training, Today, IsWhole));
        return findings.Block(id, Reach.Of(alone)) ? null : PlanOf(practice, client, training);
    }

    public static Plan PlanOf(Practice practice, Client client, Training training) =>
        Plan.For(training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, training));

    /// <summary>Whether both were read with everything that clients share the same.</summary>
    public bool SharesWith(ReadState other) =>
        IsWhole == other.IsWhole
        && Today == other.Today
        && (Reading.Practice, other.Reading.Practice) is ({ } mine, { } others)
        && ReferenceEquals(mine.Words, others.Words)
        && mine.Card.Equals(others.Card)
        && mine.Conditions.Equals(others.Conditions)
        && mine.Sports.Equals(others.Sports)
        && mine.Cautions.Equals(others.Cautions)
        && mine.Exercises.Equals(others.Exercises)
        && mine.Measures.Equals(others.Measures)
        && mine.Pictures.Equals(others.Pictures)
        && mine.Clips.Equals(others.Clips)
        && mine.Glossary.Equals(others.Glossary)
        && mine.Translations.Equals(others.Translations)
        && (
            mine.Clients.SequenceEqual(others.Clients, ReferenceEqualityComparer.Instance)
            || mine.OwnErrors.All.SequenceEqual(others.OwnErrors.All)
        );

    /// <summary>The practice as it would be for this client alone.</summary>
    private static Practice Alone(Practice practice, Client client)
    {
        var reach = Reach.Of(With(practice, practice.Exercises, client));
        return With(practice, practice.Exercises.Where(e => reach.Touches(e.At.File, client.Id)).ToSeries(), client);
    }

    /// <summary>Made anew: a copy would share what the whole one has worked out of itself.</summary>
    private static Practice With(Practice whole, Series<Exercise> exercises, Client client) =>
        new(
            whole.Card,
            whole.Conditions,
            whole.Sports,
            whole.Cautions,
            exercises,
            [client],
            whole.Measures,
            whole.Pictures,
            whole.Clips,
            whole.Glossary,
            whole.Accepted,
            whole.Translations,
            whole.Words
        );
}
