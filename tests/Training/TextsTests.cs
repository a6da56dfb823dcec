using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What words one client's site may need, and what happens where one is not there.</summary>
public sealed class TextsTests
{
    private static readonly Practice Practice = LittlePractice
        .Golden.With("glossary.yaml", "end range: As far as a joint goes.\n")
        .Read();

    private static readonly Client Ansel = Practice.Clients.Single();

    private static readonly Texts Own = Texts.Of(Practice, Ansel);

    [Fact]
    public void What_is_there_is_found_by_its_id()
    {
        Assert.Equal("Calf sway", Own.Of(new ExerciseId("calf-sway")).Title);
        Assert.Equal("A sharp stab", Own.Of(new CautionId("sharp-stab")).Title);
        Assert.Equal("Épée", Own.Of(new SportId("epee")).Name);
        Assert.Equal("Is a wrist of yours sore?", Own.Find(new ConditionId("sore-wrist"))?.Question);
        Assert.Equal("Rear ankle", Own.Session(1).Name);
        Assert.Equal("Every other day", Own.Session(2).Name);
        Assert.Equal("end range", Own.Glossary.Single().Word);
    }

    [Fact]
    public void What_is_not_there_is_said()
    {
        Assert.Throws<ArgumentException>(() => Own.Of(new ExerciseId("none")));
        Assert.Throws<ArgumentException>(() => Own.Of(new CautionId("none")));
        Assert.Throws<ArgumentException>(() => Own.Of(new SportId("none")));
        Assert.Null(Own.Find(new ConditionId("none")));
        Assert.Throws<ArgumentException>(() => Texts.Of(Practice, Ansel with { Language = "xx" }));
    }

    /// <summary>The words of a coach's own language explain nothing to somebody who reads another.</summary>
    [Fact]
    public void A_client_who_reads_another_language_has_no_glossary() =>
        Assert.Empty(Texts.Of(Practice, Ansel with { Language = "de" }).Glossary);

    [Theory]
    [InlineData(false, "rear leg")]
    [InlineData(true, "rear leg in Épée")]
    public void A_role_says_its_sport_where_two_have_one_of_that_name(bool saysSport, string said)
    {
        var role = new RoleMeant(new("epee"), "rear leg", saysSport);
        Assert.Equal(said, Own.Of(role));
        Assert.Equal("rear leg", Own.Shown(role));
    }
}
