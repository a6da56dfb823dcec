using Gradus.Domain;

namespace Gradus.Auditing.Sources;

/// <summary>What a coach wrote in English, or had translated into it, for clients to read.</summary>
/// <param name="What">How it is called in a message: "The letter to ...".</param>
/// <param name="Client">Whose it is alone; null where several may read it.</param>
internal sealed record EnglishTexts(string What, Series<Prose> Parts, ClientId? Client)
{
    private const string English = "en";

    public static IEnumerable<EnglishTexts> Of(Practice practice)
    {
        var isEnglish = practice.Card.Language == English;
        var read = practice.In(English);
        foreach (var exercise in read.Exercises.Where(e => isEnglish || practice.Find(e.Id, English) is not null))
            yield return new($"The text of '{exercise.Title}'", [exercise.Text.Why, .. exercise.Text.Instructions], null);
        foreach (var caution in read.Cautions.Where(c => isEnglish || practice.Find(c.Id, English) is not null))
            yield return new($"The text of the caution '{caution.Title}'", [caution.Body], null);
        if (!isEnglish)
            yield break;
        yield return new("What practice.md says of the programmes", [practice.Card.Scope], null);
        foreach (var client in practice.Clients.Where(c => c.Language == English))
            yield return new($"The letter to {client.Name}", [client.Programme.Letter], client.Id);
    }
}
