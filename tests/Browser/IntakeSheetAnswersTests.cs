using System.Globalization;
using Gradus.Domain;

namespace Gradus.Tests.Browser;

/// <summary>From the keyboard through the saved file into the practice.</summary>
public sealed class IntakeSheetAnswersTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>What is filled in; every other question is left open. The key presses that choose it follow the order on the
    /// page: no, yes, or no, left, right, both.</summary>
    private static readonly (string Id, int Downs, string Reply)[] Given =
    [
        ("heart-disease", 0, "no"),
        ("regularly-active", 1, "yes"),
        ("raised-blood-pressure", 1, "yes"),
        ("recent-injury", 0, "no"),
        ("falls", 0, "no"),
        ("ankle-injury", 1, "yes, left"),
        ("shoulder-injury", 2, "yes, right"),
        ("wrist-pain", 3, "yes"),
        ("sore-elbow", 0, "no"),
        ("blood-clot", 0, "no"),
    ];

    private static readonly Dictionary<string, string> Expected = Given
        .ToDictionary(g => g.Id, g => g.Reply)
        .Append(KeyValuePair.Create("pain-now", "4 left knee, 10 shoulder, 2 neck"))
        .ToDictionary();

    [Fact]
    public async Task What_the_keyboard_fills_in_is_what_the_practice_reads()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        var saved = await FilledByKeyboard(sheet);
        var client = OpenSheet.ReadBack(saved);
        Assert.Empty(OpenSheet.Differences(client, Expected));
        Assert.Equal(new Birth(1979, null), client.Born);
        Assert.Equal(
            await sheet.Page.EvaluateAsync<string>(
                "new Date(Date.now() - new Date().getTimezoneOffset() * 60000).toISOString().slice(0, 10)"
            ),
            client.Answered.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        );
        Assert.Equal(
            "Your answers are saved in the file answers.yaml, where your browser puts its downloads. 22 questions are "
                + "not answered.",
            await sheet.Status()
        );
        Assert.Empty(sheet.Troubles);
        output.WriteLine(
            $"{Expected.Count} answers by keyboard, {OpenSheet.Asked.Questions.Count - Expected.Count} left open, all read "
                + "back as they were given"
        );
    }

    /// <summary>The comparison is no empty one: a page with this fault in its script fails it.</summary>
    [Theory]
    [InlineData("const NotAsked = 'not asked';", "const NotAsked = 'no';", "signs-or-symptoms: no, not not asked")]
    [InlineData(
        "side.value === 'both' ? '' : side.value",
        "side.value === 'both' ? 'left' : side.value",
        "pain-now: 4 left knee, 10 left shoulder, 2 neck, not 4 left knee, 10 shoulder, 2 neck"
    )]
    [InlineData(
        "places.filter(place => !isEmpty(place)).map(painAt)",
        "places.slice(0, 2).map(painAt)",
        "pain-now: 4 left knee, 10 shoulder, not 4 left knee, 10 shoulder, 2 neck"
    )]
    [InlineData(": chosen.value;", ": chosen.value.replace('left', 'right');", "ankle-injury: yes, right, not yes, left")]
    public async Task A_planted_fault_is_noticed(string said, string instead, string difference)
    {
        await using var sheet = await OpenSheet.Open(content.Browser, edit: script =>
        {
            Assert.Contains(said, script, StringComparison.Ordinal);
            return script.Replace(said, instead, StringComparison.Ordinal);
        });
        Assert.Contains(difference, OpenSheet.Differences(OpenSheet.ReadBack(await FilledByKeyboard(sheet)), Expected));
    }

    [Fact]
    public async Task Nothing_hurts_and_a_day_of_birth_are_read_too()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        await sheet.Page.Locator("[name=year]").FillAsync("1990");
        await sheet.Page.Locator("[name=born]").FillAsync("1979-03-21");
        await sheet.Page.Locator("[name=answered]").FillAsync("2026-11-02");
        await sheet.Page.Locator("[data-hurts]").CheckAsync();
        await sheet.Place(1, "where").SelectOptionAsync("neck");
        await sheet.Question("pain-now").GetByLabel("No, nothing hurts").CheckAsync();
        var client = OpenSheet.ReadBack(await sheet.Saved());
        Assert.Equal((new Birth(1979, new(1979, 3, 21)), new DateOnly(2026, 11, 2)), (client.Born, client.Answered));
        Assert.Empty(OpenSheet.Differences(client, new Dictionary<string, string> { ["pain-now"] = "no" }));
    }

    [Fact]
    public async Task A_sheet_that_is_answered_whole_says_so()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        foreach (var question in OpenSheet.Asked.Questions)
            await sheet.Question(question.Id.Text).Locator("input").First.CheckAsync();
        await sheet.Page.Locator("[name=year]").FillAsync("1979");
        Assert.Empty(
            OpenSheet.Differences(
                OpenSheet.ReadBack(await sheet.Saved()),
                OpenSheet.Asked.Questions.ToDictionary(q => q.Id.Text, _ => "no")
            )
        );
        Assert.EndsWith(" You have answered every question.", await sheet.Status(), StringComparison.Ordinal);
        await sheet.Question("hernia").GetByLabel("Don't know / rather not say").CheckAsync();
        await sheet.Saved();
        Assert.EndsWith(" One question is not answered.", await sheet.Status(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_answer_that_is_taken_back_is_open_again()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        await FilledByKeyboard(sheet);
        foreach (var id in (string[])["ankle-injury", "pain-now"])
            await sheet.Question(id).GetByLabel("Don't know / rather not say").CheckAsync();

        Assert.Empty(
            OpenSheet.Differences(
                OpenSheet.ReadBack(await sheet.Saved()),
                Expected.Where(e => e.Key is not ("ankle-injury" or "pain-now")).ToDictionary()
            )
        );
    }

    [Fact]
    public async Task Starting_again_leaves_nothing_of_the_one_before()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        var untouched = await sheet.Saved();
        await FilledByKeyboard(sheet);
        await sheet.Page.ClickAsync("#clear");
        Assert.Equal("Everything is cleared.", await sheet.Status());
        Assert.Equal(untouched, await sheet.Saved());
        Assert.DoesNotContain("born", untouched, StringComparison.Ordinal);
    }

    /// <summary>What is not whole is not saved: the page says why and goes to the place.</summary>
    [Theory]
    [InlineData("answered=", "[name=answered]", "Give today's date")]
    [InlineData("answered=2198-01-01", "[name=answered]", "Give today's date")]
    [InlineData("answered=2026-11-02 born=2026-11-03", "[name=born]", "Check your date of birth")]
    [InlineData("year=79", "[name=year]", "Check your date of birth")]
    [InlineData("year=2199", "[name=year]", "Check your date of birth")]
    [InlineData("level=4", "[data-where]", "A line about what hurts")]
    [InlineData("where=knee side=left", "[data-level]", "A line about what hurts")]
    [InlineData("where=knee level=3", "[data-side]", "A line about what hurts")]
    [InlineData("hurts", "[data-level]", "A line about what hurts")]
    public async Task A_sheet_that_is_half_filled_is_not_saved(string filled, string at, string said)
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        var downloads = 0;
        sheet.Page.Download += (_, _) => downloads++;
        foreach (var word in filled.Split(' '))
        {
            var (name, value) = (word.Split('=')[0], word.Split('=')[^1]);
            if (name is "hurts" or "level" or "where" or "side")
                await sheet.Page.Locator("[data-hurts]").CheckAsync();
            if (name is "level" or "where" or "side")
                await sheet.Place(1, name).SelectOptionAsync(value);
            else if (name != "hurts")
                await sheet.Page.Locator($"[name={name}]").FillAsync(value);
        }

        await sheet.Page.ClickAsync("#save");
        Assert.StartsWith($"Not saved yet. {said}", await sheet.Status(), StringComparison.Ordinal);
        Assert.True(
            await sheet.Page.EvaluateAsync<bool>(
                "at => document.activeElement.matches(`${at}[aria-invalid=true][aria-describedby=status]`)",
                at
            )
        );
        await sheet.Page.WaitForTimeoutAsync(200);
        Assert.Equal(0, downloads);
        await sheet.Page.ClickAsync("#clear");
        await sheet.Saved();
        Assert.Equal(0, await sheet.Page.Locator("[aria-invalid]").CountAsync());
    }

    private static async Task<string> FilledByKeyboard(OpenSheet sheet)
    {
        var keyboard = sheet.Page.Keyboard;
        await sheet.TabTo("[name=year]");
        await keyboard.TypeAsync("1979");
        foreach (var question in OpenSheet.Asked.Questions)
        {
            if (question.Id == AlwaysAsked.PainNow)
                await FillPains(sheet);
            else if (Given.FirstOrDefault(g => g.Id == question.Id.Text) is { Id: not null } given)
            {
                await sheet.TabTo($"[name=to-{given.Id}]");
                await keyboard.PressAsync("Space");
                for (var n = 0; n < given.Downs; n++)
                    await keyboard.PressAsync("ArrowDown");
            }
        }

        return await sheet.Saved(async () =>
        {
            await sheet.TabTo("#save");
            await keyboard.PressAsync("Enter");
        });
    }

    private static async Task FillPains(OpenSheet sheet)
    {
        await sheet.TabTo("[name=to-pain-now]");
        await sheet.Page.Keyboard.PressAsync("Space");
        await sheet.Page.Keyboard.PressAsync("ArrowDown");
        foreach (
            var (place, words) in (
                (string[][])
                    [
                        ["4", "knee", "left"],
                        ["10", "shoulder", "both"],
                        ["2", "neck"],
                    ]
            ).Index()
        )
        {
            foreach (var (part, word) in ((string[])["level", "where", "side"]).Zip(words))
            {
                await sheet.TabTo($"[data-place]:nth-of-type({place + 1}) [data-{part}]");
                await sheet.Page.Keyboard.TypeAsync(word);
            }
        }
    }
}
