using System.Text.RegularExpressions;
using Gradus.Planning;

namespace Gradus.Tests.Planning;

public sealed partial class MirrorTests
{
    private static readonly string[] Sessions =
    [
        "- use: sway\n  side: rear leg\n  by-week:\n    1: 2 x hold 30 s\n    2: 3 x hold 40 s\n- use: brace\n- use: "
            + "reach\n  side: weapon arm",
        "- use: front\n- use: sway\n  side: front leg",
    ];

    private static readonly LittlePractice Both = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side", body: "## Do\nLean on the {side} for {hold}.")
        .Exercise("brace", "2 x press 10 s at 50%, rest 20 s, each side, plus 1 x on rear leg")
        .Exercise("front", "2 x raise 5 s, rest 10 s, on front leg")
        .Exercise("reach", "2 x hold 20 s, rest 10 s, each side", trains: "shoulder flexion")
        .Member("ansel", Sessions, weeks: 3, stance: "right")
        .Member("tamsin", Sessions, weeks: 3, stance: "left");

    private static readonly Plan Right = Both.Plan("ansel");
    private static readonly Plan Left = Both.Plan("tamsin");

    [GeneratedRegex("left|right|Left|Right|LEFT|RIGHT")]
    private static partial Regex SideWord();

    [Fact]
    public void Every_side_of_the_right_handed_is_the_other_side_of_the_left_handed()
    {
        Assert.Equal(Said(Right, swap: true), Said(Left, swap: false));
        Assert.NotEqual(Said(Right, swap: false), Said(Left, swap: false));
    }

    [Fact]
    public void Nothing_but_sides_changes_with_the_stance()
    {
        Assert.Equal(Said(Right, swap: false).Select(WithoutSides), Said(Left, swap: false).Select(WithoutSides));
        Assert.Equal(Right.Cautions, Left.Cautions);
        Assert.Equal(
            Right.Sessions.Select(s => s.Weeks.Select(w => w.Total)),
            Left.Sessions.Select(s => s.Weeks.Select(w => w.Total))
        );
    }

    [Fact]
    public void Which_side_is_which_is_said_for_the_stance()
    {
        Assert.Equal(
            [("weapon arm", "right"), ("free arm", "left"), ("front leg", "right"), ("rear leg", "left")],
            Right.Stances[0].Roles.Select(r => (r.Role, r.Side))
        );
        Assert.Equal(
            [("weapon arm", "left"), ("free arm", "right"), ("front leg", "left"), ("rear leg", "right")],
            Left.Stances[0].Roles.Select(r => (r.Role, r.Side))
        );
        Assert.Equal(("You said: the right.", "You said: the left."), (Right.Stances[0].Answer, Left.Stances[0].Answer));
    }

    /// <summary>All that is said of sides, one line for each thing. "each leg, left leg first" names the order, which is left
    /// first for both.</summary>
    private static IEnumerable<string> Said(Plan plan, bool swap)
    {
        var lines = new List<string>();
        foreach (var session in plan.Sessions)
        {
            lines.AddRange(
                session.Weeks.SelectMany(w =>
                    w.Steps.Select(s => $"{w.Heading} {s.Kind} {s.Exercise} {s.Side} {s.Seconds} {s.Words} {s.Detail}")
                )
            );
            foreach (var use in session.Uses)
            {
                lines.Add($"{use.Exercise} {use.Sides}");
                lines.AddRange(use.Text.Do.Lines());
                lines.AddRange(use.Doses.Select(d => $"{string.Join(' ', d.Weeks)} {d.Dose} {d.Change}"));
                lines.AddRange(use.Rows.SelectMany(r => r.Values.Select(v => $"{r.What} {string.Join(' ', v.Weeks)} {v.Said}")));
            }
        }

        lines.AddRange(plan.Stances.SelectMany(s => s.Roles).Select(r => $"{r.Role} {r.Side} {r.Sentence} {r.Clause}"));
        lines.AddRange(plan.Stances.SelectMany(s => s.Sentences.Append(s.Answer)));
        return swap ? lines.Select(Swapped) : lines;
    }

    private static string Swapped(string line) =>
        SideWord()
            .Replace(line, m => m.Value switch
                {
                    "left" => "right",
                    "right" => "left",
                    "Left" => "Right",
                    "LEFT" => "RIGHT",
                    "RIGHT" => "LEFT",
                    _ => "Left",
                });

    private static string WithoutSides(string line) => SideWord().Replace(line, "?");
}
