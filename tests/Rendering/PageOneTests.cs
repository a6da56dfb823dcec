using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>Page one of the demonstration practice's clients, as they get it.</summary>
public sealed class PageOneTests
{
    private static readonly Practice Content = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;

    [Theory]
    [InlineData("rufus", "left", "Your weapon arm LEFT, free arm RIGHT, front leg LEFT and rear leg RIGHT.")]
    [InlineData("maud", "right", "Your weapon arm RIGHT, free arm LEFT, front leg RIGHT and rear leg LEFT.")]
    public void It_says_which_side_is_which_before_it_leads_to_training(string client, string answer, string means)
    {
        var page = new PlainTheme().Page("index.html", Planned.For(Content, Content.Find(new ClientId(client))!));
        string[] order =
        [
            $"<p>Which hand holds the weapon? You said: the {answer}.</p>",
            $"<p>{means}</p>",
            "Is any of this wrong? Do not start: ask your coach first.",
            "href=\"before-you-start.html\"",
            "href=\"session-1.html\"",
        ];
        var places = order.Select(text => page.IndexOf(text, StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }
}
