using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Auditing;

/// <summary>A rule is named by its class; its page, with the same name, lies beside it.</summary>
public interface IRule
{
    RuleId Id => RuleId.Of(GetType());

    /// <summary>For how many days from today on what it finds can be accepted at most; null for as many as a coach
    /// writes.</summary>
    int? AcceptedDays => null;
}

/// <summary>Judges what all clients share.</summary>
public interface IPracticeRule : IRule
{
    IEnumerable<Finding> Check(Practice practice);
}

/// <summary>Judges what the practice asks of one client.</summary>
public interface IClientRule : IRule
{
    /// <param name="training">The client's own.</param>
    IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today);
}

/// <summary>Says, beside what screening itself holds against a use, what may not be done today. What is shown as allowed to a
/// coach who looks for an exercise must be stopped by none of these: whoever is asked for it asks all of them.</summary>
public interface IStoppingRule : IClientRule { }

/// <summary>Says what screening holds against a use (<see cref="Use.Against"/>), which whoever shows what is allowed has seen
/// already.</summary>
public interface IObjectionRule : IClientRule { }

/// <summary>Counts what a client's doses amount to. Where one takes longer than a dose may, there is nothing to count, and
/// another rule says so.</summary>
public interface ICountingRule : IClientRule { }

/// <summary>Judges what is not there, or not used, anywhere in the practice. Where a file could not be read it is not asked: what
/// it misses may stand in that file.</summary>
public interface IWholeRule : IRule { }

/// <summary>Judges one client's finished pages. It knows what must be there from the plan alone.</summary>
public interface ISiteRule : IRule
{
    IEnumerable<Finding> Check(Plan plan, SiteSeen site);
}

/// <summary>What it finds again and again in a site with the same words has one cause, a template mostly: it is told once, at the
/// first place, with how many more there are.</summary>
public interface IToldOnceRule : ISiteRule { }

/// <summary>Judges a site that was published earlier beside the one that the sources make now.</summary>
public interface IPublishedRule : IRule
{
    /// <param name="made">In the form in which the other was found.</param>
    IEnumerable<Finding> Check(Plan plan, Site found, Site made);
}

/// <summary>Judges the theme of a run, once for all sites that are made with it.</summary>
public interface IThemeRule : IRule
{
    IEnumerable<Finding> Check(ThemeSeen theme);
}

/// <summary>Judges a finished intake sheet, which is for nobody by name.</summary>
public interface ISheetRule : IRule
{
    IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen);
}

/// <summary>Judges what a coach accepts, beside everything that was found.</summary>
public interface IAcceptanceRule : IRule
{
    IEnumerable<Finding> Check(Series<Accepted> accepted, DateOnly today);
}

/// <summary>What a rule says, under its own name.</summary>
internal static class RuleFindings
{
    /// <param name="client">Null where it is about a file that several may share.</param>
    /// <param name="length">How many characters the caret marks.</param>
    public static Finding Found(
        this IRule rule,
        Level level,
        ClientId? client,
        Location at,
        string message,
        string help,
        int length = 1
    ) => new(rule.Id, level, client, at, message, help, length);

    /// <summary>An error on a page of the client of that plan.</summary>
    public static Finding Wrong(this ISiteRule rule, Plan plan, Location at, string message, string help) =>
        rule.Found(Level.Error, plan.Client, at, message, help);

    /// <summary>Of those that have a cause in common, the one that stands first, with how many there are.</summary>
    /// <param name="cause">Findings of another level or client never have a cause in common.</param>
    public static IEnumerable<Finding> OncePerCause(this IEnumerable<Finding> findings, Func<Finding, string> cause) =>
        from finding in findings
        group finding by (finding.Level, finding.Client, cause(finding)) into same
        select same.OrderBy(f => f.At).First() with
        {
            Places = same.Sum(f => f.Places),
        };
}
