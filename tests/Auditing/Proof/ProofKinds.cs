using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What would harm a client, as <c>kinds.txt</c> lists it: kinds, and what is done for each.</summary>
internal static class ProofKinds
{
    /// <summary>Each kind with its operators, in the order of the file.</summary>
    public static readonly Series<(string Kind, Series<string> Operators)> Listed = Read().ToSeries();

    /// <summary>What is tried of each kind.</summary>
    public static readonly IReadOnlyDictionary<string, Series<Sketch>> Tried = new Dictionary<string, Series<Sketch>>(
        StringComparer.Ordinal
    )
    {
        ["unseen"] = UnseenBreaks.All,
        ["heard otherwise"] = HeardBreaks.All,
        ["turned"] = TurnedBreaks.All,
        ["nesting"] = NestingBreaks.All,
        ["takes over"] = TakeOverBreaks.All,
        ["caution worded otherwise"] = CautionWordBreaks.All,
        ["words added"] = AddedWordBreaks.All,
        ["words of the rest"] = OtherWordBreaks.All,
        ["cautions in another order"] = CautionOrderBreaks.All,
        ["steps in another order"] = StepOrderBreaks.All,
        ["guide in another order"] = GuideOrderBreaks.All,
        ["times"] = TimeBreaks.All,
        ["sides"] = SideBreaks.All,
        ["answers"] = AnswerBreaks.All,
        ["help"] = HelpBreaks.All,
        ["links"] = LinkBreaks.All,
        ["from elsewhere"] = ElsewhereBreaks.All,
        ["scripts"] = ScriptBreaks.All,
        ["days"] = DayBreaks.All,
        ["files"] = FileBreaks.All,
        ["one file"] = OneFileBreaks.All,
        ["names"] = NameBreaks.All,
        ["taken away"] = MissingBreaks.All,
    };

    private static IEnumerable<(string, Series<string>)> Read()
    {
        var kind = "";
        var operators = new List<string>();
        foreach (var line in File.ReadAllLines(Repository.Path("tests", "Auditing", "Proof", "kinds.txt")))
        {
            if (line.StartsWith('#') || line.Length == 0)
                continue;
            if (line.StartsWith("  ", StringComparison.Ordinal))
            {
                operators.Add(line.Trim().Split(':')[0]);
                continue;
            }

            if (operators.Count > 0)
                yield return (kind, operators.ToSeries());
            kind = line.Split(':')[0];
            operators.Clear();
        }

        yield return (kind, operators.ToSeries());
    }
}
