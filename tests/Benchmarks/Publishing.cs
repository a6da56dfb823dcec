using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.Tests.Benchmarks;

/// <summary>The stages of <c>gradus publish</c> in its own order, one client after another as it does, each under the
/// watch.</summary>
internal static class Publishing
{
    public static Published Run(MadePractice made, string target, Laps laps)
    {
        var contents = made.Contents().ToArray();
        var findings = new Findings();
        var practice = laps.Time(Stages.Reading, () => PracticeReader.Read(SourceFolder.Of(contents), findings)).Practice;
        SameSites.Expect(practice is not null, "the practice could not be read");
        if (practice is null)
            return new([]);
        var trainings = laps.Time(Stages.Checking, () => practice.Clients.ToDictionary(c => c.Id, c => Training.Of(practice, c)));
        laps.Time(Stages.Checking, () => Added(findings, RuleBook.Check(practice, trainings, MadePractice.Today)));
        RefuseErrors(findings);
        var reach = laps.Time(Stages.Blocking, () => Reach.Of(practice));
        var theme = ThemeFolder.Plain();
        var run = laps.Time(Stages.Auditing, () => new AuditRun(practice.Clients.Select(c => c.Name)));
        using var folder = TargetFolder.Open(target);
        List<PublishedClient> sites =
        [
            .. practice.Clients.Select(client =>
                One(practice, client, trainings[client.Id], reach, theme, run, folder, findings, laps)
            ),
        ];
        RefuseErrors(findings);
        return new(sites);
    }

    private static PublishedClient One(
        Practice practice,
        Client client,
        Training training,
        Reach reach,
        Theme theme,
        AuditRun run,
        TargetFolder folder,
        Findings findings,
        Laps laps
    )
    {
        laps.Time(Stages.Blocking, () => findings.Block(client.Id, reach) ? null : practice.Find(client.Id));
        var plan = laps.Time(Stages.Planning, () =>
            Plan.For(training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, training))
        );
        var site = laps.Time(Stages.Rendering, () => SiteRenderer.Render(plan, theme, findings))
            ?? throw new InvalidOperationException($"No site for {client.Id}.");
        laps.Time(Stages.Auditing, () => Added(findings, RuleBook.Audit(plan, site, run)));
        laps.Time(Stages.Blocking, () => findings.Block(client.Id, reach) ? null : practice.Find(client.Id));
        var first = laps.Time(Stages.Writing, () => new FolderForm().Write(site, folder));
        var second = laps.Time(Stages.WritingAgain, () => new FolderForm().Write(site, folder));
        SameSites.Expect(first.Changed && !second.Changed, "the second publish is not told from the first");
        return PublishedClient.Of(site);
    }

    private static int Added(Findings findings, IEnumerable<Finding> found)
    {
        findings.AddRange(found);
        return findings.Count;
    }

    private static void RefuseErrors(Findings findings)
    {
        if (findings.InOrder().FirstOrDefault(f => f.Level == Level.Error) is { } error)
            throw new InvalidOperationException(
                $"The made practice is not valid: {error.At.File}:{error.At.Line}:{error.At.Column} {error.Rule} {error.Message}"
            );
    }
}
