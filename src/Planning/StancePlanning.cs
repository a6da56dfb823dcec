using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>How a client plays → the sentences that say which side is which.</summary>
internal static class StancePlanning
{
    /// <summary>The parts of a body that a role may be called after: by the end of one of its words, the last that is one of them
    /// (front leg, Waffenarm).</summary>
    private static readonly string[] Limbs = ["arm", "leg", "hand", "foot"];

    public static IEnumerable<PlannedStance> Of(Playing playing, Words words)
    {
        foreach (var played in playing.Sports)
        {
            var (sport, stance) = (played.Sport, played.Stance);
            var roles = sport.Roles.Select(r => RoleIn(playing.RoleOf(played, r), r.For(stance), words)).ToSeries();
            var key = playing.Sports.Count > 1 ? "stance-in-sport" : "stance";
            var answer = Answer(stance);
            var sentences = new List<string>
            {
                words.Say("stance-answered", ("question", sport.StanceQuestion), ("answer", answer)),
            };
            if (roles.Count > 0)
                sentences.Add(words.Say("stance-means", ("sides", words.And([.. roles.Select(r => r.Clause)]))));
            yield return new(sport.Name, sport.StanceQuestion, answer, Answer(stance.Other()), roles, sentences.ToSeries());

            string Answer(Side side) => words.Say(key, ("sport", sport.Name), ("side", words.Say(side.Word())));
        }
    }

    private static PlannedRole RoleIn(RoleName role, Side side, Words words)
    {
        var said = role.In(words);
        var limb = LimbOf(role.Name, words) ?? "other";
        return new(role.Name, words.Say(side.Word()), Sentence(side), Sentence(side.Other()), Clause(side), Clause(side.Other()));

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
