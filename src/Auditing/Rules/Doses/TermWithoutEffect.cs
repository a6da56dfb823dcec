using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class TermWithoutEffect : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        DoseFaults.Of(practice, DoseFaultKind.TermWithoutEffect, RuleId.Of(GetType()));
}
