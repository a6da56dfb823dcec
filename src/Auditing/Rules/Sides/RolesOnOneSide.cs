using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class RolesOnOneSide : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from sport in practice.Sports
        from roles in sport.Roles.GroupBy(role => role.Limb).Select(same => same.ToArray())
        where roles.Length > 1 && roles.DistinctBy(role => role.RightHanded).Count() == 1
        let side = roles[0].RightHanded
        select this.Found(
            Level.Warning,
            null,
            sport.At,
            $"{string.Join(" and ", roles.Select(role => $"'{role.Shown}'"))} are {(roles.Length == 2 ? "both" : "all")} the "
                + $"{side.Word()} {Kebab.Of(roles[0].Limb.ToString())}, and no role of '{sport.Name}' is the "
                + $"{side.Other().Word()} one.",
            $"One of them is '{side.Other().Word()}' under 'roles', unless the sport does have two words for one side."
        );
}
