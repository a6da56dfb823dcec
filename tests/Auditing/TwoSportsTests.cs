using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Tests.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>The pages of somebody who fences left-handed and plays court tennis right-handed, in the plain theme.</summary>
[Trait("Slow", "yes")]
public sealed class TwoSportsTests
{
    private static readonly Plan Plan = Club
        .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
        .Exercise("reach", "hold 20 s, each side", trains: "shoulder flexion")
        .With(
            "sports/tennis.yaml",
            "name: Court tennis\nstance: Which hand holds the racket?\nroles: { racket arm: right, front leg: left }\n"
        )
        .Member("ansel", ["- use: sway\n  side: epee front leg\n- use: reach\n  side: racket arm"])
        .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", "sports: { epee: left, tennis: right }")
        .Plan("ansel");

    [Fact]
    public void Nothing_is_found_on_them() => Assert.Empty(Found(new PlainTheme()).Select(f => $"{f.At} {f.Message}"));

    [Fact]
    public void Page_one_says_of_each_sport_which_side_is_which()
    {
        var page = new PlainTheme().Page("index.html", Plan);
        Assert.Contains(
            """
            <h3>Épée</h3>
            <p>Which hand holds your weapon? You said for Épée: the left.</p>
            <p>Your weapon arm LEFT, free arm RIGHT, front leg in Épée LEFT and rear leg RIGHT.</p>
            <h3>Court tennis</h3>
            <p>Which hand holds the racket? You said for Court tennis: the right.</p>
            <p>Your racket arm RIGHT and front leg in Court tennis LEFT.</p>
            <p><strong>Is any of this wrong? Do not start: ask your coach first.</strong></p>
            """,
            page,
            StringComparison.Ordinal
        );
        Assert.True(
            page.IndexOf("do not start", StringComparison.Ordinal) < page.IndexOf("session-1.html", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Sessions_and_exercises_name_the_role_with_its_sport()
    {
        var theme = new PlainTheme();
        Assert.Contains("left leg, your front leg in Épée", theme.Page("session-1.html", Plan), StringComparison.Ordinal);
        Assert.Contains("left leg, your front leg in Épée", theme.Page("exercise-sway.html", Plan), StringComparison.Ordinal);
        Assert.Contains("right arm, your racket arm", theme.Page("session-1.html", Plan), StringComparison.Ordinal);
        Assert.DoesNotContain(theme.Fill(Plan).Site?.Pages ?? [], p => p.Html.Contains("epee", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("index.html", "for sentence in stance.sentences", "for sentence in home.stances[0].sentences", "stance-missing")]
    [InlineData("index.html", "for stance in home.stances", "for stance in home.stances limit:1", "stance-missing")]
    [InlineData("index.html", "<h3>{{ stance.sport }}</h3>", "", "stance-missing")]
    [InlineData("index.html", "<h3>{{ stance.sport }}</h3>", "<h3>{{ home.stances[0].sport }}</h3>", "stance-missing")]
    [InlineData(
        "before-you-start.html",
        "for stance in before.stances",
        "for stance in before.stances limit:1",
        "side-named-wrong"
    )]
    [InlineData("before-you-start.html", "{{ stance.answer }}", "{{ before.stances[0].answer }}", "side-named-wrong")]
    public void A_theme_that_mixes_the_sports_up_is_found(string template, string said, string instead, string rule)
    {
        Assert.Equal(
            [rule],
            Found(new PlainTheme().Edit(template, said, instead)).Select(f => f.Rule.Text).Except(PlantedFault.ClosedLists)
        );
    }

    private static Series<Finding> Found(PlainTheme theme)
    {
        var (site, broken) = theme.Fill(Plan);
        Assert.Empty(broken.Select(f => $"{f.At} {f.Message}"));
        return RuleBook.Audit(Plan, Assert.IsType<Site>(site), []).ToSeries();
    }
}
