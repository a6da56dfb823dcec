using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>How a client plays → the sentences that say which side is which.</summary>
internal static class StanceWords
{
    /// <summary>The parts of a body that a role may be called after: by the end of one of its words, the last that is one of them
    /// (front leg, Waffenarm).</summary>
    private static readonly string[] Limbs = ["arm", "leg", "hand", "foot"];

    public static IEnumerable<PlannedStance> Of(Stances stances, Texts texts)
    {
        var words = texts.Words;
        foreach (var played in stances.Sports)
        {
            var sport = texts.Of(played.Sport);
            var roles = played.Roles.Select(r => RoleIn(stances.RoleOf(played, r), r.Side, texts)).ToSeries();
            var key = stances.Sports.Count > 1 ? "stance-in-sport" : "stance";
            var answer = Answer(played.Stance);
            var sentences = new List<string>
            {
                words.Say("stance-answered", ("question", sport.StanceQuestion), ("answer", answer)),
            };
            if (roles.Count > 0)
                sentences.Add(words.Say("stance-means", ("sides", words.And([.. roles.Select(r => r.Clause)]))));
            yield return new(
                sport.Name,
                sport.StanceQuestion,
                answer,
                Answer(played.Stance.Other()),
                roles,
                sentences.ToSeries()
            );

            string Answer(Side side) => words.Say(key, ("sport", sport.Name), ("side", words.Say(side.Word())));
        }
    }

    private static PlannedRole RoleIn(RoleMeant role, Side side, Texts texts)
    {
        var (words, said, shown) = (texts.Words, texts.Of(role), texts.Shown(role));
        var limb = LimbOf(shown, words) ?? "other";
        return new(shown, words.Say(side.Word()), Sentence(side), Sentence(side.Other()), Clause(side), Clause(side.Other()));

        string Sentence(Side one) => words.Say($"role-is-{limb}", ("role", said), ("side", words.Say(one.Word())));

        string Clause(Side one) =>
            words.Say($"role-means-{limb}", ("role", said), ("side", words.Say($"capital-{one.Word()}-{limb}")));
    }

    private static string? LimbOf(string role, Words words) =>
        role.Split(' ')
            .Reverse()
            .Select(word =>
                Limbs.FirstOrDefault(limb => word.EndsWith(words.Say($"limb-{limb}"), StringComparison.OrdinalIgnoreCase))
            )
            .FirstOrDefault(limb => limb is not null);
}
