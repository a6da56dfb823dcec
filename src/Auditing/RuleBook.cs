using System.Reflection;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>All rules, in the order an author should meet them.</summary>
public static class RuleBook
{
    private static readonly OtherClientNamed Named = new();

    public static readonly Series<IRule> Rules =
    [
        new DoseUnreadable(),
        new TermWithoutEffect(),
        new ProsePlaceholderWrong(),
        new ExerciseWithoutStopSign(),
        new ExerciseWithoutExpectSign(),
        new ExerciseWithoutContraindication(),
        new EmergencyTextMissing(),
        new SideUnresolved(),
        new ConditionNotAsked(),
        new ContraindicatedExercise(),
        new ClearanceExpired(),
        new DoseOutsideEnvelope(),
        new DoseTooLong(),
        new ProgrammeOver(),
        new PageWithoutCautions(),
        new CautionAltered(),
        new CautionHidden(),
        new CautionAfterInstruction(),
        new TimesDoNotAddUp(),
        new TimeAgainstText(),
        new StepAltered(),
        new LinkBrokenOnPage(),
        new RequestToNetwork(),
        Named,
    ];

    /// <summary>Practice → findings.</summary>
    /// <param name="today">Decides findings only, never a page.</param>
    public static IEnumerable<Finding> Check(Practice practice, DateOnly today)
    {
        foreach (var finding in Rules.OfType<IPracticeRule>().SelectMany(rule => rule.Check(practice))) yield return finding;
        foreach (var client in practice.Clients)
        {
            var uses = Uses.Of(practice, client);
            foreach (var finding in Rules.OfType<IClientRule>().SelectMany(rule => rule.Check(practice, client, uses, today))) yield return finding;
        }
    }

    /// <summary>Plan + finished site → findings.</summary>
    /// <param name="others">The names of the other clients, for the one rule that looks for them.</param>
    public static IEnumerable<Finding> Audit(Plan plan, Site site, IEnumerable<string> others)
    {
        var reading = SiteReading.Of(plan, site);
        return Rules.OfType<ISiteRule>().SelectMany(rule => rule.Check(plan, reading)).Concat(Named.Check(plan, reading, others));
    }

    /// <summary>The page of every rule, in the same order.</summary>
    public static IEnumerable<RulePage> Pages() => Rules.Select(rule => RulePage.Of(rule.Id, Assembly.GetExecutingAssembly()));
}
