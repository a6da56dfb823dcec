using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Where the links of a site lead, and what they may be called: whoever presses a name gets to what it names.</summary>
public static class LinkNames
{
    /// <returns>The names for each address: a page or a file of the site, a place on the page itself, or one that a text of the
    /// coach or of the practice leads to.</returns>
    public static ILookup<string, string> Of(Plan plan) =>
        Pages(plan)
            .Concat(Places(plan))
            .Concat(Contacts(plan))
            .ToLookup(l => l.Address, l => Spacing.Collapse(l.Name), StringComparer.Ordinal);

    private static IEnumerable<(string Address, string Name)> Pages(Plan plan)
    {
        var words = plan.Words;
        yield return (PagePath.Home, words.Say("home"));
        yield return (PagePath.BeforeYouStart, words.Say("before-you-start"));
        yield return (PagePath.BeforeYouStart, words.Say("all-signs"));
        yield return (PagePath.Weeks, words.Say("your-weeks"));
        if (plan.Progress is not null)
            yield return (PagePath.Progress, words.Say("progress"));
        yield return (PagePath.Calendar, words.Say("calendar"));
        foreach (var session in plan.Sessions)
        {
            yield return (session.Path, session.Name);
            yield return (session.Path, words.Say("guide-start"));
            yield return (session.Path, words.Say("print"));
            yield return (session.Path + "#" + PageId.Lead, words.Say("guide-start"));
            yield return (session.Path, words.Say("print"));
            yield return (session.Path + "#" + PageId.Print, words.Say("print"));
        }

        foreach (var exercise in plan.Exercises)
        {
            yield return (exercise.Path, exercise.Title);
            yield return (exercise.Path, words.Say("easier-version", ("exercise", exercise.Title)));
            yield return (exercise.Path, words.Say("harder-version", ("exercise", exercise.Title)));
        }
    }

    /// <summary>Places of the page on which the link is.</summary>
    private static IEnumerable<(string Address, string Name)> Places(Plan plan)
    {
        yield return ("#" + PageId.Content, plan.Words.Say("skip"));
        yield return ("#" + PageId.Cautions, plan.Words.Say("stop-signs-link"));
        foreach (var kind in Enum.GetValues<CautionKind>())
            yield return ("#" + PageId.Cautions, plan.Words.Say("kind-" + Kebab.Of(kind.ToString())));
        foreach (var use in plan.Sessions.SelectMany(s => s.Uses))
            yield return ("#" + PageId.Exercise(use.Letter), $"{use.Letter} {use.Title}");
        yield return ("#" + PageId.Letter, plan.Words.Say("letter"));
        yield return ("#" + PageId.Watch, plan.Words.Say("stop-signs-link"));
        yield return (PagePath.Home + "#" + PageId.Watch, plan.Words.Say("stop-signs-link"));
    }

    private static IEnumerable<(string Address, string Name)> Contacts(Plan plan)
    {
        var (contact, emergency) = (plan.Publisher.Contact, plan.Emergency);
        yield return (PhoneAddress.Of(contact.Phone), contact.Phone);
        yield return (PhoneAddress.Of(contact.Phone), plan.Words.Say("call-coach", ("coach", plan.Publisher.Coach)));
        yield return ("mailto:" + contact.Email, contact.Email);
        yield return (emergency.Address, emergency.Call);
        yield return (emergency.Address, plan.Words.Say("emergency-press", ("call", emergency.Call)));
        foreach (
            var inline in Prose.Inlines(emergency.Sentence).Concat(Prose.Inlines(emergency.ChestFirst)).Concat(Written(plan))
        )
            if (inline is Inline.Link link)
                yield return (link.Address, Prose.PlainOf(link.Text));
            else if (inline is Inline.ExerciseLink exercise)
                yield return (PagePath.Exercise(exercise.Exercise), Prose.PlainOf(exercise.Text));
            else if (inline is Inline.Term term)
                yield return ("#" + PageId.Term(term), term.Words);
    }

    /// <summary>Every piece of what the coach wrote.</summary>
    internal static IEnumerable<Inline> Written(Plan plan) =>
        plan
            .Exercises.SelectMany(e => e.Uses.Select(u => u.Text).Append(e.Text))
            .SelectMany(t => t.Instructions.Append(t.Why))
            .Concat(plan.Cautions.Select(c => c.Body))
            .Append(plan.Programme.Letter)
            .Append(plan.Publisher.Scope)
            .SelectMany(p => p.Inlines())
            .Concat(plan.Exercises.SelectMany(e => e.Uses.SelectMany(u => u.Text.Pair).Concat(e.Text.Pair)))
            .Concat(plan.Sessions.SelectMany(s => s.Uses).SelectMany(u => u.Text.Pair));
}
