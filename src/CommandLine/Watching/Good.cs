using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>A client's site that could be made: the newest one, or the last good one where what is saved now cannot be
/// published.</summary>
internal sealed class Good(Plan plan, Theme theme)
{
    private Site? site;

    public Plan Plan { get; } = plan;

    public Theme Theme { get; } = theme;

    /// <summary>What the audit found on it; null where it has not been audited.</summary>
    public Series<Finding>? Found { get; set; }

    /// <summary>The names that were looked for on it.</summary>
    public object? AuditedWith { get; set; }

    public bool IsOf(Plan plan, Theme theme) => ReferenceEquals(Theme, theme) && Plan.Equals(plan);

    /// <summary>Made when somebody asks, and made anew after it was let go: the same every time. Null (and a finding) where the
    /// theme is broken.</summary>
    public Site? Site(Findings findings) => site ??= SiteRenderer.Render(Plan, Theme, findings);

    /// <summary>A site is kept as long as somebody looks at it: a hundred of them take much memory.</summary>
    public void LetGo() => site = null;
}

/// <summary>What is known of one client.</summary>
/// <param name="Name">As the client's own file says; the name of the folder where it cannot be read.</param>
/// <param name="Good">Null where no site could be made yet.</param>
/// <param name="IsNow">Whether the site is made from what is saved now.</param>
/// <param name="Stopped">Since when no pages are made; null where they are.</param>
/// <param name="Version">Told anew each time the site is another; from 0.</param>
/// <param name="Told">What is said of the client now; null where it has not been worked out.</param>
internal sealed record Watched(ClientId Client, string Name, Good? Good, bool IsNow, DateOnly? Stopped, int Version, Told? Told)
{
    /// <summary>The reading that its site was made from last, or would have been.</summary>
    public ReadState? SeenIn { get; init; }
}

/// <summary>What is said of a client, or of all, as it is shown beside the page.</summary>
/// <param name="Markup">The findings one after the other.</param>
internal sealed record Told(int Errors, int Warnings, int Notes, string Counted, string Markup)
{
    public static Told Of(Series<Finding> findings, Excerpts excerpts) =>
        new(
            findings.Count(f => f.Level == Level.Error),
            findings.Count(f => f.Level == Level.Warning),
            findings.Count(f => f.Level == Level.Note),
            FindingText.Counted(findings),
            FindingHtml.Each(findings, excerpts)
        );
}
