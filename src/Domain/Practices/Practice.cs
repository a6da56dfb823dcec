namespace Gradus.Domain;

/// <summary>Everything a coach keeps, checked and bound: each list in the order of its ids (conditions in the order they are asked).</summary>
/// <param name="Motions">Those that come with Gradus, and the practice's own.</param>
/// <param name="Pictures">Every picture that some text shows.</param>
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
    Series<Motion> Motions,
    Series<Picture> Pictures,
    Series<GlossaryEntry> Glossary,
    Series<Acceptance> Accepted,
    Series<Translation> Translations,
    WordBook Words)
{
    private readonly Dictionary<ExerciseId, Exercise> exercises = Exercises.ToDictionary(e => e.Id);
    private readonly Dictionary<ClientId, Client> clients = Clients.ToDictionary(c => c.Id);
    private readonly Dictionary<CautionId, Caution> cautions = Cautions.ToDictionary(c => c.Id);

    public Exercise? Find(ExerciseId id) => exercises.GetValueOrDefault(id);

    public Caution? Find(CautionId id) => cautions.GetValueOrDefault(id);

    public Condition? Find(ConditionId id) => Conditions.FirstOrDefault(c => c.Id == id);

    public Sport? Find(SportId id) => Sports.FirstOrDefault(s => s.Id == id);

    public Client? Find(ClientId id) => clients.GetValueOrDefault(id);
}

/// <summary>Who the coach is, and what holds for everybody: <c>practice.md</c>.</summary>
/// <param name="Emergency">What to do in an emergency, by country.</param>
/// <param name="Scope">What these programmes are, and are not.</param>
public sealed record PracticeCard(
    string Name,
    string Coach,
    Contact Contact,
    string Language,
    Series<EmergencyText> Emergency,
    PracticeSettings Settings,
    Prose Scope,
    Location At)
{
    public string? EmergencyIn(string country) => Emergency.FirstOrDefault(e => string.Equals(e.Country, country, StringComparison.Ordinal))?.Text;
}

public sealed record Contact(string Email, string Phone);

public sealed record EmergencyText(string Country, string Text);
