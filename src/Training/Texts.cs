using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Every word that one client's site may need, in the client's language: the catalogue, and the coach's own texts by id.
/// What is not in it cannot stand on a page: of other clients there is nothing.</summary>
/// <param name="Words">The catalogue.</param>
/// <param name="Exercise">Null where there is none of that id.</param>
/// <param name="Glossary">Empty for a client who reads another language than the coach writes.</param>
public sealed record Texts(
    Words Words,
    PracticeCard Card,
    Client Client,
    Series<Sport> Sports,
    Series<Condition> Conditions,
    Series<Caution> Cautions,
    Func<ExerciseId, Exercise?> Exercise,
    Series<Picture> Pictures,
    Series<Clip> Clips,
    Series<GlossaryEntry> Glossary
)
{
    private readonly Dictionary<CautionId, Caution> cautions = Cautions.ToDictionary(c => c.Id);

    /// <exception cref="ArgumentException">There is no catalogue for the client's language.</exception>
    public static Texts Of(Practice practice, Client client)
    {
        var words = practice.Words.In(client.Language)
            ?? throw new ArgumentException($"No catalogue for '{client.Language}'.", nameof(client));
        var read = practice.In(client.Language);
        return new(
            words,
            read.Card,
            client,
            read.Sports,
            read.Conditions,
            read.Cautions,
            read.Find,
            read.Pictures,
            read.Clips,
            client.Language == practice.Card.Language ? practice.Glossary : []
        );
    }

    /// <exception cref="ArgumentException">It could not be read.</exception>
    public Exercise Of(ExerciseId id) => Exercise(id) ?? throw new ArgumentException($"No exercise '{id}'.", nameof(id));

    /// <exception cref="ArgumentException">It could not be read.</exception>
    public Caution Of(CautionId id) =>
        cautions.GetValueOrDefault(id) ?? throw new ArgumentException($"No caution '{id}'.", nameof(id));

    /// <exception cref="ArgumentException">It could not be read.</exception>
    public Sport Of(SportId id) =>
        Sports.FirstOrDefault(s => s.Id == id) ?? throw new ArgumentException($"No sport '{id}'.", nameof(id));

    /// <summary>Null where there is none of that id.</summary>
    public Condition? Find(ConditionId id) => Conditions.FirstOrDefault(c => c.Id == id);

    /// <summary>Of a session of the programme, by its number from 1.</summary>
    public ProgrammeSession Session(int number) => Client.Programme.AllSessions[number - 1];

    /// <summary>A role as the client reads it: "front leg", "front leg in Épée fencing".</summary>
    public string Of(RoleMeant role) =>
        role.SaysSport ? Words.Say("role-in-sport", ("role", Shown(role)), ("sport", Of(role.Sport).Name)) : Shown(role);

    /// <summary>A role by itself, with the capitals that the coach gave it.</summary>
    public string Shown(RoleMeant role) => Of(role.Sport).Roles.First(r => r.Name == role.Role).Shown;
}
