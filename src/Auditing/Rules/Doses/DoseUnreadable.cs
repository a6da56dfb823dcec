using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class DoseUnreadable : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        DoseFaults.Of(practice, DoseFaultKind.Unreadable, RuleId.Of(GetType()));
}
