using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed partial class LetterGreetsAnother : IClientRule
{
    /// <summary>Longer than a greeting: "And a very good morning, Maud".</summary>
    private const int MostWords = 5;

    [GeneratedRegex(@"^[^,.!?:;\n]*")]
    private static partial Regex UpToMark();

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.Programme.Letter.Blocks.FirstOrDefault() is not Block.Paragraph first)
            yield break;
        var words = Words(UpToMark().Match(Prose.PlainOf(first.Text)).Value);
        if (words.Length is 0 or > MostWords || Words(client.Name).Intersect(words, StringComparer.OrdinalIgnoreCase).Any())
            yield break;
        var greeted = practice.Clients.FirstOrDefault(other =>
            other.Id != client.Id && Words(other.Name) is [var name, ..] && name == words[^1]
        );
        if (greeted is not null)
            yield return this.Found(
                Level.Warning,
                client.Id,
                first.At,
                $"{client.Name}'s letter begins with '{words[^1]}', and {greeted.Name} is another client.",
                "See that the letter is this client's, with this client's sides and numbers. A letter for several greets each "
                    + "with {name}."
            );
    }

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
