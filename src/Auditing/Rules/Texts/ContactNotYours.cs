using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a new practice has in the place of the coach's own, and its invented client, for whom that is well; a test
/// holds that these are its words.</summary>
public sealed class ContactNotYours : IPracticeRule
{
    private static readonly ClientId Invented = new("perrin");

    public IEnumerable<Finding> Check(Practice practice)
    {
        if (practice.Clients.All(c => c.Id == Invented))
            yield break;
        var card = practice.Card;
        var left = new[]
        {
            (Key: "name", Own: card.Name, Given: "Your practice"),
            (Key: "coach", Own: card.Coach, Given: "Your name"),
            (Key: "email", Own: card.Contact.Email, Given: "you@example.org"),
            (Key: "phone", Own: card.Contact.Phone, Given: "+44 1632 960000"),
        }
            .Where(value => value.Own == value.Given)
            .ToArray();
        if (left.Length > 0)
            yield return this.Found(
                Level.Warning,
                null,
                card.At,
                $"{Joined(left.Select(l => $"'{l.Given}'"))} {(left.Length == 1 ? "is what a new practice has" : "are what a new "
                    + "practice has")}: your clients read it, and whoever has to stop reaches nobody by it.",
                $"Write your own under {Joined(left.Select(l => $"'{l.Key}'"))} in practice.md."
            );
    }

    private static string Joined(IEnumerable<string> words) =>
        words.ToArray() is [.. var first, var last] && first.Length > 0
            ? $"{string.Join(", ", first)} and {last}"
            : words.Single();
}
