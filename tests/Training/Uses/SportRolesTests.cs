using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

public sealed class SportRolesTests
{
    /// <summary>The épée of Sluice Lane, a racket game whose front leg is the one opposite the racket, and a sport that says its
    /// roles for somebody whose left side leads.</summary>
    private static readonly LittlePractice Summer = Club
        .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
        .With(
            "sports/court-tennis.yaml",
            "name: Court tennis\nstance: Which hand holds the racket?\nroles: { racket arm: right, front leg: left, rear "
                + "leg: right }\n"
        )
        .With(
            "sports/archery.yaml",
            "name: Archery\nstance: Which hand draws the string?\nroles: { bow arm: left, draw arm: right, arm: right, "
                + "archery arm: left }\n"
        );

    // "?" is a name that does not say which side. Each row: how the client plays, the name, the side.
    [Theory]
    [InlineData("epee: right", "left", "left")]
    [InlineData("epee: left", "left", "left")]
    [InlineData("epee: left", "right", "right")]
    [InlineData("epee: right", "front leg", "right")]
    [InlineData("epee: left", "front leg", "left")]
    [InlineData("epee: right", "rear leg", "left")]
    [InlineData("epee: left", "rear leg", "right")]
    [InlineData("epee: right", "epee rear leg", "left")]
    [InlineData("epee: left", "epee rear leg", "right")]
    [InlineData("epee: left", "weapon arm", "left")]
    [InlineData("epee: left", "racket arm", "?")]
    [InlineData("epee: left", "court-tennis racket arm", "?")]
    [InlineData("epee: left", "sabre front leg", "?")]
    [InlineData("epee: left", "epee", "?")]
    [InlineData("epee: left", "epee left", "?")]
    [InlineData("epee: left", "Front leg", "?")]
    [InlineData("court-tennis: right", "front leg", "left")]
    [InlineData("court-tennis: left", "front leg", "right")]
    [InlineData("court-tennis: right", "court-tennis front leg", "left")]
    [InlineData("court-tennis: right", "epee front leg", "?")]
    [InlineData("epee: left, court-tennis: right", "front leg", "?")]
    [InlineData("epee: left, court-tennis: left", "front leg", "?")]
    [InlineData("epee: left, court-tennis: right", "epee front leg", "left")]
    [InlineData("epee: left, court-tennis: right", "court-tennis front leg", "left")]
    [InlineData("epee: right, court-tennis: right", "epee front leg", "right")]
    [InlineData("epee: right, court-tennis: right", "court-tennis front leg", "left")]
    [InlineData("court-tennis: left, epee: right", "court-tennis rear leg", "left")]
    [InlineData("court-tennis: left, epee: right", "epee rear leg", "left")]
    [InlineData("epee: left, court-tennis: right", "weapon arm", "left")]
    [InlineData("epee: left, court-tennis: right", "racket arm", "right")]
    [InlineData("epee: left, court-tennis: right", "court-tennis racket arm", "right")]
    [InlineData("epee: left, court-tennis: right", "court-tennis weapon arm", "?")]
    [InlineData("epee: left, court-tennis: right", "right", "right")]
    [InlineData("archery: right", "bow arm", "left")]
    [InlineData("archery: left", "bow arm", "right")]
    [InlineData("archery: right", "arm", "right")]
    [InlineData("archery: right", "archery arm", "?")]
    [InlineData("archery: right", "archery archery arm", "left")]
    public void A_name_is_the_side_that_the_sport_and_the_stance_make_it(string sports, string name, string side) =>
        Assert.Equal(side, Stances(sports).Resolve(SideName.Of(name))?.Word() ?? "?");

    [Theory]
    [InlineData("epee: left", "weapon arm, free arm, front leg, rear leg, left, right")]
    [InlineData("court-tennis: left", "racket arm, front leg, rear leg, left, right")]
    [InlineData(
        "epee: left, court-tennis: right",
        "weapon arm, free arm, epee front leg, epee rear leg, racket arm, court-tennis front leg, court-tennis rear leg, "
            + "left, right"
    )]
    [InlineData("archery: left", "bow arm, draw arm, arm, archery archery arm, left, right")]
    public void The_names_that_may_be_written_all_say_one_side(string sports, string names)
    {
        var stances = Stances(sports);
        Assert.Equal(names, string.Join(", ", stances.Names));
        Assert.All(stances.Names, name => Assert.NotNull(stances.Resolve(SideName.Of(name))));
    }

    [Theory]
    [InlineData("front leg", "epee front leg, court-tennis front leg")]
    [InlineData("weapon arm", "weapon arm")]
    [InlineData("epee weapon arm", "weapon arm")]
    [InlineData("back leg", "")]
    public void A_name_of_two_sports_can_be_written_in_two_ways(string name, string names) =>
        Assert.Equal(names, string.Join(", ", Stances("epee: left, court-tennis: right").NamesFor(SideName.Of(name))));

    [Theory]
    [InlineData("epee: left, court-tennis: right", "epee front leg", "left leg, your front leg in Épée")]
    [InlineData("epee: right, court-tennis: right", "court-tennis front leg", "left leg, your front leg in Court tennis")]
    [InlineData("epee: right, court-tennis: right", "Epee  Rear leg", "left leg, your rear leg in Épée")]
    [InlineData("epee: right, court-tennis: right", "left", "left leg")]
    [InlineData("epee: left", "epee front leg", "left leg, your front leg")]
    [InlineData("epee: left, archery: right", "front leg", "left leg, your front leg")]
    [InlineData("epee: left, archery: right", "epee front leg", "left leg, your front leg")]
    public void The_client_reads_the_role_without_the_id_and_with_the_sport_where_two_have_it(
        string sports,
        string side,
        string said
    )
    {
        var plan = With(sports, side).Plan("ansel");
        Assert.Equal(said, plan.Sessions[0].Uses[0].Sides);
        Assert.All(plan.Only().Steps, step => Assert.EndsWith(", left leg", step.Words, StringComparison.Ordinal));
    }

    /// <summary>A dose that names the role itself: on a line of a week, and behind plus.</summary>
    [Theory]
    [InlineData("2 x hold 30 s, on court-tennis front leg", "L L")]
    [InlineData("2 x hold 30 s, on epee front leg", "R R")]
    [InlineData("1 x hold 30 s, each side, plus 1 x on epee front leg", "R R L")]
    [InlineData("1 x hold 30 s, each side, plus 1 x on court-tennis front leg", "L L R")]
    public void A_dose_names_a_role_of_one_of_two_sports(string dose, string held)
    {
        var plan = Summer
            .Exercise("sway", dose)
            .Member("ansel", ["- use: sway"])
            .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", "sports: { epee: right, court-tennis: right }")
            .Plan("ansel");
        Assert.Equal(
            held,
            string.Join(' ', plan.Only().Steps.Where(s => s.Kind == StepKind.Hold).Select(s => s.Side == Side.Left ? "L" : "R"))
        );
    }

    private static Stances Stances(string sports)
    {
        var practice = With(sports, "left").Read();
        return Gradus.Trainings.Stances.Of(practice, practice.Clients.Single());
    }

    private static LittlePractice With(string sports, string side) =>
        Summer
            .Member("ansel", [$"- use: sway\n  side: {side}"])
            .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", $"sports: {{ {sports} }}");
}
