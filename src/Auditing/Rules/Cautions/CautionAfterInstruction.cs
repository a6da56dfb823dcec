using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class CautionAfterInstruction : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site
            .Sightings.OfType<Sighting.After>()
            .Select(after =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    after.At,
                    $"Here {after.What} comes too late: \"{after.Instruction}\" already tells somebody to move.",
                    "Put the cautions before everything that tells somebody to move."
                )
            );
}
