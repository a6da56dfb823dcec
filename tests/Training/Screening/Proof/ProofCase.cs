using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>One made client, as both judgements see it.</summary>
/// <param name="Product">What the product says stands in the way, in the words of the second judgement.</param>
/// <param name="IsBlocked">Whether the product makes no site.</param>
/// <param name="Errors">The rules that stop the client.</param>
/// <param name="Found">What is in the site and must not be, or must be and is not; empty where there is no site.</param>
internal sealed record ProofCase(
    int Practice,
    MadeLibrary Library,
    MadeClient Client,
    SortedSet<string> Product,
    SortedSet<string> Second,
    bool IsBlocked,
    string[] Errors,
    string[] Found
)
{
    /// <summary>What the two do not agree on; null where they agree.</summary>
    public string? Difference =>
        !Product.SetEquals(Second)
            ? $"practice {Practice}, {Client.Id}: only the product says [{string.Join("; ", Product.Except(Second))}], "
                + $"only the second says [{string.Join("; ", Second.Except(Product))}]{About()}"
        : IsBlocked != (Second.Count > 0)
            ? $"practice {Practice}, {Client.Id}: {(IsBlocked ? "blocked" : "published")} with [{string.Join("; ", Second)}], "
                + $"by [{string.Join("; ", Errors)}]"
        : Found.Length > 0 ? $"practice {Practice}, {Client.Id}: {string.Join("; ", Found)}"
        : null;

    /// <summary>What is needed to see who is right: the exercises they differ on, and what the client said and does.</summary>
    private string About()
    {
        var lines = Product.Except(Second).Concat(Second.Except(Product)).ToArray();
        return "\n  "
            + string.Join(
                "\n  ",
                Library
                    .Exercises.Where(e => lines.Any(l => l.Contains($" {e.Id} ", StringComparison.Ordinal)))
                    .Select(e => e.ToString())
                    .Append(string.Join(", ", Client.Answers.Where(a => a.Value != "no").Select(a => $"{a.Key}: {a.Value}")))
                    .Concat(Client.Clearances.Select(c => $"{c.Condition} {c.On:O} {c.Until:O} {string.Join(", ", c.Limits)}"))
                    .Concat(Client.Log.Select(e => e.Line))
                    .Append($"answered {Client.Answered:O}, born {Client.Born}, {Client.Weeks} weeks from {Client.Start:O}")
            );
    }

    private static readonly Theme Theme = ThemeFolder.Plain();

    /// <summary>From which the practices of a plain run have every kind.</summary>
    private const ulong FirstSeed = 301;

    public static IEnumerable<ProofCase> Of(int number, int clients)
    {
        var made = MadePractice.Of(new Chance(FirstSeed + (ulong)number), clients);
        var files = made.Files();
        var findings = new Findings();
        var practice = PracticeReader.Read(files.Folder, findings).Practice
            ?? throw new InvalidOperationException($"Practice {number} cannot be read: {findings.First()}");
        if (findings.Count > 0)
            throw new InvalidOperationException($"Practice {number}: {findings.First().At} {findings.First().Message}");
        findings.AddRange(RuleBook.Check(practice, Planned.Trainings(practice), ScreeningProofTests.Today).ToSeries());
        var reach = Reach.Of(practice);
        var byClient = findings.ToLookup(f => f.Client?.Text);
        foreach (var client in made.Clients)
        {
            var bound = practice.Find(new ClientId(client.Id)) ?? throw new InvalidOperationException(client.Id);
            var second = new SecondJudgement(made.Library, client, ProofSlip.None);
            var blocked = findings.Block(bound.Id, reach);
            var site = blocked
                ? null
                : SiteRenderer.Render(Planned.For(practice, bound), Theme, findings)
                    ?? throw new InvalidOperationException("The theme is broken.");
            yield return new(
                number,
                made.Library,
                client,
                Said(practice, bound, byClient[client.Id]),
                second.Everything(),
                blocked,
                [
                    .. byClient[client.Id]
                        .Concat(byClient[null])
                        .Where(f => f.Level == Level.Error)
                        .Select(f => $"{f.Rule} {f.Message}"),
                ],
                site is null ? [] : [.. Forbidden(site, second.Forbidden()), .. Absent(site, second.Titles())]
            );
        }
    }

    /// <summary>Each page of a forbidden exercise, and each page that names one.</summary>
    public static string[] Forbidden(Site site, IEnumerable<string> titles) =>
        [
            .. from title in titles
            from page in site.Pages
            where page.Path == $"exercise-{title["Drill ".Length..]}.html" || page.Html.Contains(title, StringComparison.Ordinal)
            select $"{title} on {page.Path}",
        ];

    /// <summary>Each exercise of the programme that has no page, so that no site passes for being empty.</summary>
    private static IEnumerable<string> Absent(Site site, IEnumerable<string> titles) =>
        titles
            .Where(title => site.Pages.All(page => page.Path != $"exercise-{title["Drill ".Length..]}.html"))
            .Select(title => $"no page for {title}");

    private static SortedSet<string> Said(Practice practice, Client client, IEnumerable<Finding> findings)
    {
        var said = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var use in Planned.Uses(practice, client))
        foreach (var objection in use.Against)
            said.Add($"{use.Session} {use.Exercise.Id} {objection.Condition}: {Kind(objection)}");
        foreach (
            var finding in findings.Where(f =>
                f.Level == Level.Error
                && f.Rule.Text is "agreement-missing" or "effort-above-youth-limit" or "answers-stale" or "client-too-young"
            )
        )
            said.Add($"client: {finding.Rule}");
        foreach (var finding in findings.Where(f => f.Rule.Text == "side-unresolved"))
            said.Add($"client: side-unresolved {finding.Message.Split('\'')[3]}");
        foreach (var finding in findings.Where(f => f.Rule.Text == "edition-outlives-clearance"))
            said.Add($"client: {finding.Rule} {client.Clearances.First(c => c.At == finding.At).Condition}");
        foreach (var condition in practice.Conditions.Where(c => c.IsAlwaysAsked && client.AnswerTo(c.Id) is null))
            said.Add($"client {condition.Id}: not asked");
        return said;
    }

    private static string Kind(Objection objection) =>
        objection switch
        {
            Objection.Forbidden => "forbidden",
            Objection.Loaded => "loaded",
            Objection.Painful painful => $"painful {painful.Pain}{(painful.IsTooMuch ? " too much" : "")}",
            Objection.CameBack back => back.IsAsked ? "back clinician" : "back stale",
            Objection.TooEarly => "too early",
            Objection.NotAsked => "not asked",
            Objection.NotCleared => "not cleared",
            Objection.ClearanceShort => "short",
            Objection.BeyondLimit beyond => "beyond " + beyond.Limit.Words,
            _ => throw new NotSupportedException($"{objection}"),
        };
}
