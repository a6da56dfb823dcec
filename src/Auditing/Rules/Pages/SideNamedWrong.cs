using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class SideNamedWrong : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) => Steps(plan, site).Concat(site.Page(Plan.BeforeYouStartPath) is { } page ? Sentences(plan, page) : []);

    private IEnumerable<Finding> Steps(Plan plan, SiteReading site) =>
        from pair in StepPair.Of(plan, site)
        where pair.OtherSide is not null
        select Wrong(
            plan, pair.Seen.At, $"This step names the {pair.OtherSide}: \"{pair.Seen.Text}\"; in the plan it is \"{pair.Expected}\".",
            "Show each step's words as they are; an item names no other side than its own.");

    /// <summary>What each side's name means for the client, and which hand or foot that rests on, word for word.</summary>
    private IEnumerable<Finding> Sentences(Plan plan, PageReading page)
    {
        var words = plan.Words;
        string[] sides = [words.Say("left"), words.Say("right")];
        foreach (var role in plan.Stance.Roles)
        {
            if (Fault(plan, page, (line, said) => line == said, Said(role.Side), [.. sides.Where(s => s != role.Side).Select(Said)]) is { } finding) yield return finding;

            string Said(string side) => words.Say("role-is", ("role", role.Role), ("side", side));
        }

        string[] stances = [words.Say("stance-left"), words.Say("stance-right")];
        if (Fault(plan, page, (line, said) => WholeWords.Places(line, said).Any(), plan.Stance.Answer, [.. stances.Where(s => s != plan.Stance.Answer)]) is { } stance) yield return stance;
    }

    private Finding? Fault(Plan plan, PageReading page, Func<string, string, bool> says, string expected, string[] others)
    {
        var help = "Show on before-you-start what each side means for this client, word for word, and nothing else about it.";
        if (page.Shown.FirstOrDefault(l => others.Any(o => says(l.Text, o))) is { } line)
            return Wrong(plan, line.At, $"This page says \"{line.Text}\"; for {plan.ClientName} it is \"{expected}\".", help);
        return page.Shown.Any(l => says(l.Text, expected)) ? null : Wrong(plan, Location.Whole(page.Path), $"The sentence \"{expected}\" is not on this page, or it is other.", help);
    }

    private Finding Wrong(Plan plan, Location at, string message, string help) => new(RuleId.Of(GetType()), Level.Error, plan.Client, at, message, help);
}
