using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A review for the coach at the keyboard: who needs them first and why, then client by client.</summary>
internal static class ReviewText
{
    public static void Write(TextWriter to, Practice practice, IEnumerable<ClientReview> clients)
    {
        var all = clients.ToArray();
        var needs = all.SelectMany(r => ReviewNeed.Of(practice, r)).ToArray();
        to.WriteLine(needs.Length == 0 ? "Nobody needs you first." : "Who needs you first, and why");
        foreach (var kind in needs.GroupBy(n => n.Kind).OrderBy(g => g.Key))
        {
            to.WriteLine();
            to.WriteLine(ReviewNeed.TitleOf(kind.Key));
            foreach (var need in kind)
            {
                to.WriteLine($"  {need.Client.Name} ({need.Client.Id}): {need.Says}");
                to.WriteLine($"    {need.Do}");
            }
        }

        if (all.Any(r => r.StoppedOn is not null))
        {
            to.WriteLine();
            to.WriteLine("Stopped");
            foreach (var (client, on) in ReviewSentences.StoppedOf(all))
                to.WriteLine($"  {client.Name} ({client.Id}): {on}");
        }

        foreach (var review in all.Where(r => r.StoppedOn is null))
        {
            to.WriteLine();
            to.WriteLine(
                $"{review.Client.Name} ({review.Client.Id}): {review.Client.Programme.Title}, from "
                    + $"{review.Client.Programme.Start.Iso()} to {review.Client.Programme.End.Iso()}"
                    + ReviewSentences.PausesOf(review.Client.Programme)
            );
            foreach (var part in ReviewPart.Of(practice, review))
            {
                to.WriteLine();
                to.WriteLine("  " + part.Title);
                if (part.Note is { } note)
                    to.WriteLine("  " + note);
                foreach (var line in part.Lines)
                    to.WriteLine("    " + line.Text);
            }
        }

        to.WriteLine();
        to.WriteLine(ReviewSentences.NoRanking);
    }
}
