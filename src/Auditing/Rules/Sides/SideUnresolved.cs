using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SideUnresolved : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (training.Refusals.Any(r => r is Refusal.SportUnread))
            yield break;
        foreach (var use in training.Uses)
        {
            if (use.Unresolved is { } name)
                yield return training.Stances.NamesFor(name) is { Count: > 1 } names
                    ? Said(
                        client,
                        use,
                        $"'{name}' may be more than one role that {client.Name} has.",
                        $"Write which: {string.Join(" or ", names)}."
                    )
                    : Said(
                        client,
                        use,
                        $"'{name}' is no side that {SportsOf(practice, training)} knows.",
                        Nearest.Ask(
                            name.Word,
                            training.Stances.Names,
                            $"Write one of: {string.Join(", ", training.Stances.Names)}."
                        )
                    );
            else if (OfAnotherLimb(practice, use) is { } role)
                yield return Said(
                    client,
                    use,
                    $"'{role.Name}' is {(role.Limb == Limb.Arm ? "an arm" : "a leg")}, and '{practice.TitleOf(use)}' works "
                        + $"{(role.Limb == Limb.Arm ? "a leg" : "an arm")}.",
                    $"Write a role of the {(role.Limb == Limb.Arm ? "leg" : "arm")}, or left or right."
                );
            else if (use.Exercise.Trains.IsPaired && use.Weeks.Any(w => w.Dose.Sides.Order == SideOrder.None))
                yield return Said(
                    client,
                    use,
                    $"Nothing says on which side '{practice.TitleOf(use)}' is done.",
                    "Add 'side:' here, or a side to the dose of the exercise, as each side."
                );
        }
    }

    /// <summary>The role by which an exercise is done, where it is one of another limb; the trunk turns with either.</summary>
    private static Role? OfAnotherLimb(Practice practice, Use use) =>
        use.Exercise.Trains.Limb == Limb.Trunk
            ? null
            : use
                .Weeks.Select(w => w.Role)
                .OfType<RoleMeant>()
                .Select(meant => practice.Find(meant.Sport)?.Roles.FirstOrDefault(r => r.Name == meant.Role))
                .OfType<Role>()
                .FirstOrDefault(r => r.Limb != use.Exercise.Trains.Limb);

    private static string SportsOf(Practice practice, Training training) =>
        string.Join(" or ", training.Stances.Sports.Select(s => practice.Find(s.Sport)?.Name));

    private Finding Said(Client client, Use use, string message, string help) =>
        this.Found(
            Level.Error,
            client.Id,
            use.Written.Side?.At ?? use.At,
            message,
            help,
            (use.Written.Side?.Value.Written ?? use.Exercise.Id.Text).Length
        );
}
