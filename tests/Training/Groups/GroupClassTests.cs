using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>One class of people who share a session: each does what their own week and their own differences say, and the times
/// are those that everybody can follow. Times by hand, as a coach with a watch would add them.</summary>
public sealed class GroupClassTests
{
    private const string Shared = """
        ---
        title: Footwork
        weeks: 3
        lighter: []
        sessions:
          - name: Together
            days: [Mon]
            do:
              - use: sway
                by-week: { 1: 2 x hold 30 s, 2: 2 x hold 40 s, 3: 3 x hold 40 s }
              - use: lean
                by-week: { 1: 2 x hold 20 s }
        ---
        Hello.
        """;

    private const string Evening = "name: Evening\nprogramme: footwork\nclients: [ada, ben, cis]\nday: Mon\n";

    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-3 x hold 20-60 s, rest 20 s, on front leg")
        .Exercise("lean", "1-2 x hold 10-30 s, rest 15 s, on right")
        .Exercise("sit", "1-2 x hold 10-60 s, on right");

    /// <summary>Week 2: 5 + 40 + 20 + 40 = 105, then 10 and 5 + 20 + 15 + 20 = 70.</summary>
    [Fact]
    public void All_in_one_week_do_the_same_on_their_own_sides()
    {
        var met = Met(new(2027, 1, 11), ("ada", "right", ""), ("ben", "left", ""), ("cis", "right", ""));
        Assert.Equal([("sway", 105), ("lean", 70)], met.Parts.Select(p => (p.Name, p.Seconds.Value)));
        Assert.Equal(175, met.Total.Value);
        Assert.Equal([Side.Right, Side.Left, Side.Right], met.Parts[0].Does.Select(d => d.Use.Dose.Dose.Sides.First));
        Assert.All(met.Members, m => Assert.Equal((2, null, 0), (m.Week, m.Absence, m.Leaves.Count)));
    }

    /// <summary>Somebody who began a week later does 2 x 30 s: the longest of each hold is 40 s. In week 3 there is a third set,
    /// which the others do not have: 5 + 3 · 40 + 2 · 20 = 165 against 105.</summary>
    [Theory]
    [InlineData(11, 105)]
    [InlineData(18, 165)]
    public void The_longest_of_each_step_counts(int day, int sway)
    {
        var met = Met(
            new(2027, 1, day),
            ("ada", "right", ""),
            ("ben", "right", "start: 2027-01-11"),
            ("cis", "right", "start: 2027-01-11")
        );
        Assert.Equal(sway, met.Parts[0].Seconds.Value);
    }

    /// <summary>Longer in one step and shorter in another: 40 s of the one and 20 s rest, 30 s of the other.</summary>
    [Fact]
    public void Nobody_is_hurried_in_any_step()
    {
        var met = Met(
            new(2027, 1, 4),
            ("ada", "right", Differs("change: lean\n    by-week: { 1: \"2 x hold 30 s, rest 15 s\" }")),
            ("ben", "right", Differs("change: lean\n    by-week: { 1: \"2 x hold 10 s, rest 25 s\" }")),
            ("cis", "right", "")
        );
        Assert.Equal(10 + 5 + 30 + 25 + 30, met.Parts[1].Seconds.Value);
    }

    [Fact]
    public void Each_leaves_out_adds_and_does_otherwise_in_its_place()
    {
        var met = Met(
            new(2027, 1, 4),
            ("ada", "right", Differs("leave-out: lean")),
            ("ben", "right", Differs("instead: lean\n    use: sit")),
            ("cis", "right", Differs("add: sit\n    before: lean"))
        );
        Assert.Equal(["sway", "sit", "lean"], met.Parts.Select(p => p.Name));
        Assert.Equal(["lean"], met.Members[0].Leaves);
        Assert.Equal(
            ["ada:sway", "ben:sway", "cis:sway", "cis:sit+", "ben:sit<lean", "cis:lean"],
            met.Parts.SelectMany(p =>
                p.Does.Select(d =>
                    $"{d.Client.Id}:{d.Use.Use.Exercise.Id}{(d.Use.IsAdded ? "+" : "")}"
                    + (d.Use.InsteadOf is { } other ? $"<{other}" : "")
                )
            )
        );
    }

    /// <summary>Beside two uses of one name it is done twice: all parts together take what the session takes.</summary>
    [Fact]
    public void What_is_added_beside_two_uses_is_counted_once_at_each()
    {
        var practice = Practice(
                ("ada", "right", Differs("add: sit\n    before: sway")),
                ("ben", "right", ""),
                ("cis", "right", "")
            )
            .Edit("programmes/footwork.md", "use: lean", "use: sway");
        var read = practice.Read();
        var met = Met(read, new(2027, 1, 4), c => Training.Of(read, c));
        Assert.Equal(["sit", "sway", "sit", "sway"], met.Parts.Select(p => p.Name));
        Assert.All(met.Parts.Where(p => p.Name == "sit"), p => Assert.Equal("ada", Assert.Single(p.Does).Client.Id.Text));
        var took = met.Members[0].Does.Where(d => d.IsAdded).Select(d => d.Steps.Sum(s => s.Seconds.Value));
        var whole = Training.Of(read, met.Members[0].Client).Sessions[0].Weeks[0].Total.Value;
        Assert.Equal(whole, met.Members[0].Does.Sum(d => d.Steps.Sum(s => s.Seconds.Value)));
        Assert.All(took, seconds => Assert.True(seconds > 0));
    }

    /// <summary>A difference from week 2 on is none in week 1.</summary>
    [Theory]
    [InlineData(4, "lean", 0)]
    [InlineData(11, "sit<lean", 1)]
    public void What_is_other_from_a_week_on_is_as_shared_before_it(int day, string does, int leaves)
    {
        var from = "\n    from-week: 2";
        var met = Met(
            new(2027, 1, day),
            ("ada", "right", Differs("instead: lean\n    use: sit" + from)),
            ("ben", "right", Differs("leave-out: lean" + from)),
            ("cis", "right", "")
        );
        var ada = met.Members[0].Does[1];
        Assert.Equal(does, $"{ada.Use.Exercise.Id}{(ada.InsteadOf is { } o ? "<" + o : "")}");
        Assert.Equal(leaves, met.Members[1].Leaves.Count);
    }

    [Fact]
    public void Who_does_not_train_on_that_day_is_named_with_the_reason_and_waited_for_by_nobody()
    {
        var met = Met(
            new(2027, 1, 18),
            ("ada", "right", "start: 2027-01-25"),
            ("ben", "right", "pause: { from: 2027-01-16, until: 2027-01-20 }"),
            ("cis", "right", "start: 2026-12-21")
        );
        Assert.Equal([Absence.NotBegun, Absence.Paused, Absence.Over], met.Members.Select(m => m.Absence));
        Assert.Equal((0, 0), (met.Parts.Count, met.Total.Value));
    }

    [Fact]
    public void Who_has_stopped_or_stands_in_an_error_takes_no_part()
    {
        var practice = Practice(("ada", "right", ""), ("ben", "right", ""), ("cis", "right", ""))
            .Edit("clients/ben/client.yaml", "minutes: 60", "minutes: 60\nstopped: { on: 2027-01-02, because: moved }")
            .Read();
        var met = Met(practice, new(2027, 1, 4), c => c.Id.Text == "ada" ? null : Training.Of(practice, c));
        Assert.Equal([Absence.NotReady, Absence.Stopped, (Absence?)null], met.Members.Select(m => m.Absence));
        Assert.All(met.Parts, p => Assert.Equal("cis", Assert.Single(p.Does).Client.Id.Text));
    }

    private static string Differs(string difference) => $"differences:\n  - {difference}\n    because: agreed";

    private static GroupClass Met(DateOnly day, params (string Id, string Stance, string Own)[] members)
    {
        var practice = Practice(members).Read();
        return Met(practice, day, c => Training.Of(practice, c));
    }

    private static GroupClass Met(Practice practice, DateOnly day, Func<Client, Training?> training)
    {
        var group = Assert.Single(practice.Groups);
        return GroupClass.Of(group, group.Clients.Select(practice.Find).OfType<Client>(), day, training);
    }

    private static LittlePractice Practice(params (string Id, string Stance, string Own)[] members)
    {
        var practice = Library.With("programmes/footwork.md", Shared).With("groups/evening.yaml", Evening);
        foreach (var (id, stance, own) in members)
        {
            var start = own.Contains("start:", StringComparison.Ordinal) ? "" : "start: 2027-01-04\n";
            practice = practice
                .Member(id, ["- use: sway"], stance: stance)
                .With($"clients/{id}/programme.md", $"---\nfrom: footwork\n{start}{own}\n---\n");
        }

        return practice;
    }
}
