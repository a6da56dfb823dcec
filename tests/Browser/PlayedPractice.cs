using System.Text;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

[assembly: AssemblyFixture(typeof(Gradus.Tests.Browser.PlayedPractice))]

namespace Gradus.Tests.Browser;

/// <summary>The demonstration practice with one more client, whose sessions are of the kinds that nobody else there has;
/// published to a folder when somebody first asks for it, for all tests of this project.</summary>
public sealed class PlayedPractice : IDisposable
{
    /// <summary>The client who is not in the demonstration practice.</summary>
    private const string Made = "osric";

    private const string Programme = """
        ---
        title: A little of everything
        start: 2026-12-07
        weeks: 2
        sessions:
          - name: Steps of effort
            days: [Mon]
            do:
              - use: ankle-press-ramp
                by-week:
                  1: 2 x press 20 s at 15 to 60% in 4 steps
                  2: 1 x press 28 s at 100 to 15% in 7 steps
              - use: cushion-squeeze
                keep-when-short: yes
                by-week:
                  1: 1 x 2 x press 8 s at 100%
                  2: 1 x 2 x press 8 s at 20%
              - use: side-lying-foot-lift
                side: weapon arm
                by-week:
                  1: 2 x raise 12 s at 20 to 41% in 2 steps, rest 0 s
          - name: Slow breaths
            days: [Wed]
            do:
              - use: slow-breathing
                by-week:
                  1: 1 x breathe 8 breaths
                  2: 2 x breathe 105 s, rest 20 s
              - use: long-arm-sit-back
                keep-when-short: yes
                by-week:
                  1: 2 x hold 5 breaths
              - use: seated-side-reach
                by-week:
                  1: 2 x breathe 3 breaths
          - name: Round and round
            days: [Thu]
            do:
              - rounds: 3
                rest: 45 s
                change: 12 s
                of:
                  - use: wrist-lift
                    by-week:
                      1: move 8 reps at effort 7
                  - use: side-lying-arm-turn
                    by-week:
                      1: move 6 reps
                  - use: wall-arm-lift
                    by-week:
                      1: 3 x raise 5 s
              - rounds: 2
                of:
                  - use: half-kneeling-hip-lean
                    by-week:
                      1: (press 5 s at 30% then hold 15 s)
                  - use: one-hand-carry
                    by-week:
                      1: carry 20 m at effort 10
          - name: One after the other
            days: [Sat]
            do:
              - use: seated-knee-out-round
                by-week:
                  1: 2 x (press 10 s at 61% then pull 10 s at 20% then hold 20 s)
                  2: 1 x (2 x (pull 6 s at 1% then hold 95 s)), each side, plus 2 x on front leg
              - use: wall-calf-lean
                by-week:
                  1: 2 x hold 30 s
              - use: split-squat
                keep-when-short: yes
                by-week:
                  1: 3 x move 6 reps, rest 5 s
                  2: 2 x move 5 reps
              - use: two-foot-hops
                by-week:
                  1: 2 x move 10 s at effort 1
        alternate:
          - name: A calmer day
            instead-of: Steps of effort
            kind: flare
            do:
              - use: slow-breathing
                by-week:
                  1: 1 x breathe 4 breaths
        ---
        Osric,

        here is a little of everything.

        Ottoline

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-played-").FullName;

    private readonly Lazy<IReadOnlyList<(Client Client, Plan Plan)>> made;
    private int changes;

    public PlayedPractice() => made = new(Publish);

    internal IReadOnlyList<(Client Client, Plan Plan)> Plans => made.Value;

    /// <summary>Every session of everybody, once for all weeks that are the same.</summary>
    internal IEnumerable<PlayedSession> All() =>
        from one in Plans
        from session in one.Plan.Sessions
        from weeks in session.Weeks
        select new PlayedSession(one.Client, one.Plan, session, weeks);

    /// <summary>The first week of a session of the client who is not in the demonstration practice.</summary>
    internal PlayedSession Of(int session) => All().First(p => p.Client.Id.Text == Made && p.Session.Number == session);

    public string FolderOf(ClientId client)
    {
        Assert.NotEmpty(Plans);
        return Path.Combine(folder, client.Text);
    }

    /// <summary>The folder of a client in which a file was changed.</summary>
    public string Changed(ClientId client, string file, Func<string, string> change)
    {
        var copy = Directory.CreateDirectory(Path.Combine(folder, $"changed-{Interlocked.Increment(ref changes)}")).FullName;
        foreach (var path in Directory.EnumerateFiles(FolderOf(client)))
            File.Copy(path, Path.Combine(copy, Path.GetFileName(path)));
        var text = File.ReadAllText(Path.Combine(copy, file));
        var changed = change(text);
        Assert.NotEqual(text, changed);
        File.WriteAllText(Path.Combine(copy, file), changed);
        return copy;
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private IReadOnlyList<(Client Client, Plan Plan)> Publish()
    {
        var findings = new Findings();
        var files = Directory
            .EnumerateFiles(Repository.Path("content"), "*", SearchOption.AllDirectories)
            .ToDictionary(
                f => Path.GetRelativePath(Repository.Path("content"), f).Replace('\\', '/'),
                File.ReadAllBytes,
                StringComparer.Ordinal
            );
        var client = Encoding
            .UTF8.GetString(files["clients/rufus/client.yaml"])
            .Replace("Rufus Elphick", "Osric Fennimore", StringComparison.Ordinal);
        files[$"clients/{Made}/client.yaml"] = Encoding.UTF8.GetBytes(client);
        files[$"clients/{Made}/programme.md"] = Encoding.UTF8.GetBytes(Programme);
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.NotNull(practice);
        Assert.Empty(
            practice
                .Clients.SelectMany(c => c.Programme.AllSessions)
                .SelectMany(s => s.Do)
                .SelectMany(u => u.ByWeek)
                .Where(w => w.Dose.Dose is null)
                .Select(w => w.Dose.Line)
        );
        (Client Client, Plan Plan)[] plans = [.. practice.Clients.Select(c => (c, Planned.For(practice, c)))];
        foreach (var (_, plan) in plans)
        {
            var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
            Assert.NotNull(site);
            Publication.Write(site, folder);
        }

        Assert.Empty(findings);
        return plans;
    }
}
