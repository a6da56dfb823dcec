using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class SideNamedWrong : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        Steps(plan, site)
            .Concat(site.Page(PagePath.Home) is { } home ? Clauses(plan, home) : [])
            .Concat(site.Page(PagePath.BeforeYouStart) is { } page ? Sentences(plan, page) : []);

    private IEnumerable<Finding> Steps(Plan plan, SiteSeen site) =>
        from pair in site.Steps
        where pair.OtherSide is not null
        select this.Wrong(
            plan,
            pair.Seen.At,
            $"This step names the {pair.OtherSide}: \"{pair.Seen.Text}\"; in the plan it is \"{pair.Expected}\".",
            "Show each step's words as they are; an item names no other side than its own."
        );

    /// <summary>Page one says of no side the opposite. That it says what it must is judged by the rule stance-missing.</summary>
    private IEnumerable<Finding> Clauses(Plan plan, PageSeen page) =>
        from role in plan.Stances.SelectMany(s => s.Roles)
        let line = page.Shown.FirstOrDefault(l => HasPhrase(l.Text, role.OtherClause))
        where line is not null
        select this.Wrong(
            plan,
            line.At,
            $"This page says \"{role.OtherClause}\"; for {plan.ClientName} it is \"{role.Clause}\".",
            "Show the sentences of the stance as they are, and nothing else about it."
        );

    /// <summary>What each side's name means for the client, and how the client plays, word for word.</summary>
    private IEnumerable<Finding> Sentences(Plan plan, PageSeen page)
    {
        foreach (var stance in plan.Stances)
        {
            foreach (var role in stance.Roles)
                if (Fault(plan, page, string.Equals, role.Sentence, role.OtherSentence) is { } finding)
                    yield return finding;
            if (Fault(plan, page, HasPhrase, stance.Answer, stance.OtherAnswer) is { } wrong)
                yield return wrong;
        }
    }

    private Finding? Fault(Plan plan, PageSeen page, Func<string, string, bool> says, string expected, string other)
    {
        var help = "Show on before-you-start what each side means for this client, word for word, and nothing else about it.";
        if (page.Shown.FirstOrDefault(l => says(l.Text, other)) is { } line)
            return this.Wrong(
                plan,
                line.At,
                $"This page says \"{line.Text}\"; for {plan.ClientName} it is \"{expected}\".",
                help
            );
        return page.Shown.Any(l => says(l.Text, expected))
            ? null
            : this.Wrong(plan, page.At, $"The sentence \"{expected}\" is not on this page, or it is other.", help);
    }

    private static bool HasPhrase(string line, string phrase) => WholeWords.Places(line, phrase).Any();
}
