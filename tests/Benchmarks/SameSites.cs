using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.Tests.Benchmarks;

/// <summary>That the same practice gives the same bytes, whatever the run: its files handed in from last to first, its clients
/// from last to first and several at a time.</summary>
internal static class SameSites
{
    private const int Compared = 200;

    public static void Check(MadePractice made, Published published)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(made.Contents().Reverse()), findings).Practice
            ?? throw new InvalidOperationException("Nothing was read.");
        var theme = ThemeFolder.Plain();
        var again = practice
            .Clients.Take(Compared)
            .Reverse()
            .AsParallel()
            .WithDegreeOfParallelism(4)
            .Select(client =>
            {
                var training = Training.Of(practice, client);
                var ranges = ClientRanges.ForPages(practice, client, training);
                return SiteRenderer.Render(Plan.For(training, Texts.Of(practice, client), ranges), theme, new Findings())
                    ?? throw new InvalidOperationException("Nothing was rendered.");
            })
            .Select(PublishedClient.Of)
            .ToArray();
        Expect(
            Published.Of(again.OrderBy(c => c.Id, StringComparer.Ordinal)) == Published.Of(published.Clients.Take(Compared)),
            "the sites depend on the order in which the practice is read or its clients are rendered"
        );
    }

    public static void Expect(bool holds, string otherwise)
    {
        if (!holds)
            throw new InvalidOperationException($"The benchmark does not stand: {otherwise}.");
    }
}
