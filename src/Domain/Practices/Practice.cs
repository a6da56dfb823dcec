using System.Collections.Concurrent;

namespace Gradus.Domain;

/// <summary>Everything a coach keeps, checked and bound: each list in the order of its ids (conditions in the order they are
/// asked).</summary>
/// <param name="Measures">Every motion with how it is measured: those that come with Gradus, and the practice's own.</param>
/// <param name="Pictures">Every picture that some text shows.</param>
/// <param name="Clips">Every clip that some text shows.</param>
/// <param name="Accepted">Warnings that the coach lets stand.</param>
/// <param name="Translations">Cautions and exercises in other languages.</param>
/// <param name="Words">A catalogue for each language that some client reads.</param>
public sealed record Practice(
    PracticeCard Card,
    Series<Condition> Conditions,
    Series<Sport> Sports,
    Series<Caution> Cautions,
    Series<Exercise> Exercises,
    Series<Client> Clients,
    Series<Measure> Measures,
    Series<Picture> Pictures,
    Series<Clip> Clips,
    Series<GlossaryEntry> Glossary,
    Series<Acceptance> Accepted,
    Series<Translation> Translations,
    WordBook Words
)
{
    /// <summary>The programmes that several clients may follow, as far as they could be read.</summary>
    public Series<SharedProgramme> Programmes { get; init; } = [];

    /// <summary>Who trains together, as far as it could be read; of no client's pages.</summary>
    public Series<Group> Groups { get; init; } = [];

    private readonly Dictionary<ExerciseId, Exercise> exercises = Exercises.ToDictionary(e => e.Id);
    private readonly Dictionary<ClientId, Client> clients = Clients.ToDictionary(c => c.Id);
    private readonly Dictionary<CautionId, Caution> cautions = Cautions.ToDictionary(c => c.Id);
    private readonly Dictionary<string, Translation> translations = Translations.ToDictionary(
        t => t.At.File,
        StringComparer.Ordinal
    );

    private readonly Lazy<OwnErrors> ownErrors = new(() =>
        OwnErrors.Of(Clients.Select(c => (c.Programme, RangeSeries.Of(c.Readings, DateOnly.MaxValue))))
    );

    private readonly Lazy<HashSet<ConditionId>> namedConditions = new(() =>
        [.. Exercises.SelectMany(e => e.Contraindications).Select(c => c.Value)]
    );

    // Every plan begins with the practice in its client's language, so each language is made once.
    private readonly ConcurrentDictionary<string, Practice> inLanguages = new(StringComparer.Ordinal);

    public Series<Exercise> Exercises
    {
        get
        {
            Noted?.NoteEverything();
            return field;
        }
    } = Exercises;

    public Series<Client> Clients
    {
        get
        {
            Noted?.NoteEverything();
            return field;
        }
    } = Clients;

    public Series<Translation> Translations
    {
        get
        {
            Noted?.NoteEverything();
            return field;
        }
    } = Translations;

    /// <summary>What its own readings say about its error of measuring.</summary>
    public OwnErrors OwnErrors
    {
        get
        {
            Noted?.NoteErrors();
            return ownErrors.Value;
        }
    }

    /// <summary>The conditions that some exercise names. That it was asked for is not noted: few changes of an exercise change
    /// it, so it counts as asked by everybody.</summary>
    public IReadOnlySet<ConditionId> NamedConditions => namedConditions.Value;

    /// <summary>Where it is noted what is asked of it; null where nobody wants to know.</summary>
    private Asked? Noted { get; init; }

    /// <summary>The same practice, which notes what is asked of it.</summary>
    public Practice Noting(Asked asked) => this with { Noted = asked };

    /// <summary>How a range is measured that a reading, a demand or a need names.</summary>
    /// <exception cref="InvalidOperationException">There is no such motion.</exception>
    public Measure MeasureOf(string motion) => Measures.First(m => m.Motion.Name == motion);

    /// <summary>Every way to measure a motion that an exercise trains; none where it is not measured.</summary>
    public IEnumerable<Measure> WaysToMeasure(Motion trained)
    {
        var ways = Measures.Where(m => m.Of == trained.Name).ToArray();
        return ways.Length > 0 || trained.Unit == MotionUnit.None ? ways : Measures.Where(m => m.Motion.Name == trained.Name);
    }

    /// <summary>The easier or harder version of an exercise; null where it has none, or it could not be read.</summary>
    public Exercise? VersionOf(Exercise exercise, ExerciseVersion version) =>
        exercise.Named(version) is { } named ? Find(named.Value) : null;

    /// <summary>One that a use was settled from, which there is.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public Exercise Of(ExerciseId id) => Find(id) ?? throw new ArgumentException($"No exercise '{id}'.", nameof(id));

    /// <summary>One that screening spoke of, which there is.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public Condition Of(ConditionId id) => Find(id) ?? throw new ArgumentException($"No condition '{id}'.", nameof(id));

    public Exercise? Find(ExerciseId id)
    {
        Noted?.Note(id);
        return exercises.GetValueOrDefault(id);
    }

    public Caution? Find(CautionId id) => cautions.GetValueOrDefault(id);

    public Condition? Find(ConditionId id) => Conditions.FirstOrDefault(c => c.Id == id);

    public Sport? Find(SportId id) => Sports.FirstOrDefault(s => s.Id == id);

    public Client? Find(ClientId id)
    {
        Noted?.NoteEverything();
        return clients.GetValueOrDefault(id);
    }

    public Translation.OfCaution? Find(CautionId id, string language) =>
        translations.GetValueOrDefault(Translation.PathOf($"cautions/{id}.md", language)) as Translation.OfCaution;

    public Translation.OfExercise? Find(ExerciseId id, string language)
    {
        Noted?.Note(id);
        return translations.GetValueOrDefault(Translation.PathOf($"exercises/{id}.md", language)) as Translation.OfExercise;
    }

    /// <summary>The language that it is read in; null for the one that the coach writes.</summary>
    private string? ReadIn { get; init; }

    /// <summary>The practice as a client of that language reads it: with the titles and texts of cautions and exercises that are
    /// translated, and the questions of Gradus in its words. Without a translation stands what the coach wrote first, which a
    /// rule says.</summary>
    public Practice In(string language)
    {
        if (ReadIn is not null || language == Card.Language)
            return this;
        // For everybody it is made from the whole practice; what is asked of it afterwards is noted for who asks.
        var read = inLanguages.GetOrAdd(language, (Noted is null ? this : this with { Noted = null }).Translated);
        return Noted is null ? read : read.Noting(Noted);
    }

    private Practice Translated(string language) =>
        new(
            Card,
            Words.In(language) is { } words ? Conditions.Select(c => c.In(words)).ToSeries() : Conditions,
            Sports,
            Cautions
                .Select(c => Find(c.Id, language) is { } said ? c with { Title = said.Title, Body = said.Body } : c)
                .ToSeries(),
            Exercises
                .Select(e =>
                    Find(e.Id, language) is { } said ? e with { Title = said.Title, Text = said.Text.WithPairOf(e.Text) } : e
                )
                .ToSeries(),
            Clients,
            Measures,
            Pictures,
            Clips,
            Glossary,
            Accepted,
            [],
            Words
        )
        {
            ReadIn = language,
        };
}

/// <summary>Who the coach is, and what holds for everybody: <c>practice.md</c>.</summary>
/// <param name="Language">That its texts are written in, BCP 47, two letters.</param>
/// <param name="Emergency">Whom to call in an emergency, by country, in the order in which they are written.</param>
/// <param name="Scope">What these programmes are, and are not.</param>
public sealed record PracticeCard(
    string Name,
    string Coach,
    Contact Contact,
    string Language,
    Series<EmergencyNumber> Emergency,
    PracticeSettings Settings,
    Prose Scope,
    Location At
)
{
    public EmergencyNumber? EmergencyIn(string country) =>
        Emergency.FirstOrDefault(e => string.Equals(e.Country, country, StringComparison.Ordinal));
}

public sealed record Contact(string Email, string Phone);
