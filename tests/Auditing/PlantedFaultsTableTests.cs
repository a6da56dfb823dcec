using Gradus.Domain;

namespace Gradus.Tests.Auditing;

[Trait("Slow", "yes")]
public sealed class PlantedFaultsTableTests(ITestOutputHelper output)
{
    private static readonly (string Family, Series<PlantedFault> Faults)[] Families =
    [
        ("caution missing", PageWithoutCautionsTests.Faults),
        ("caution altered", CautionAlteredTests.Faults),
        ("caution hidden", CautionHiddenTests.Faults),
        ("caution too late", CautionAfterInstructionTests.Faults),
        ("restrictions", RestrictionOnPageTests.Faults),
        ("weeks", WeekMissingTests.Faults),
        ("times", TimesDoNotAddUpTests.Faults),
        ("time and words", TimeAgainstTextTests.Faults),
        ("words of the plan", PlanWordsAlteredTests.Faults),
        ("bars", BarDrawnWrongTests.Faults),
        ("measured ranges", RangeToldWrongTests.Faults),
        ("sides", SideNamedWrongTests.Faults),
        ("stances", StanceMissingTests.Faults),
        ("steps", StepAlteredTests.Faults),
        ("calendars", CalendarAgainstPlanTests.Faults),
        ("links", LinkBrokenOnPageTests.Faults),
        ("addresses", AddressToNetworkTests.Faults),
        ("policies", PolicyWeakTests.Faults),
        ("other clients", OtherClientNamedTests.Faults),
        ("scripts and styles", ScriptOrStyleFromAuthorTests.Faults),
        ("languages", LanguageMissingTests.Faults),
        ("labels", LabelMissingTests.Faults),
        ("headings", HeadingSkippedTests.Faults),
    ];

    [Fact]
    public void Every_planted_fault_is_found()
    {
        output.WriteLine($"{"planted", -18}{"kinds", 6}{"found", 7}{"by the right rules alone", 27}");
        foreach (var (family, faults) in Families)
        {
            var found = faults.Count(f => f.Found().Length > 0);
            var rightly = faults.Count(f => f.IsRight());
            output.WriteLine($"{family, -18}{faults.Count, 6}{found, 7}{rightly, 27}");
            Assert.Equal((faults.Count, faults.Count), (found, rightly));
            Assert.All(faults, f => Assert.NotEmpty(f.Rules));
        }
    }
}
