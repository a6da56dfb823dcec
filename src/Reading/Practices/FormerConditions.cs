namespace Gradus.Reading;

/// <summary>Ids of conditions that everybody was asked about before, and those that took the place of each.</summary>
internal sealed record FormerConditions(ILookup<string, string> Since)
{
    public static readonly FormerConditions None = new(Enumerable.Empty<string>().ToLookup(id => id));

    public bool Has(string id) => Since.Contains(id);

    /// <summary>"heart-disease, metabolic-disease, kidney-disease"</summary>
    public string Instead(string id) => string.Join(", ", Since[id]);

    public string Message(string id) => $"{Quote.Of(id)} is not asked any more: {Since[id].Count()} questions took its place.";

    public string Help(string id) => $"Write {Instead(id)} in its place, each with what is true of it.";
}
