using System.Text;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.Trainings;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The sheet of a class on one sheet of paper and on a small screen, with as many clients as a group may have, each with
/// something of their own.</summary>
public sealed class GroupSheetTests(PublishedContent content)
{
    [Fact]
    public async Task The_largest_group_fits_one_sheet_of_A4_in_letters_that_can_be_read()
    {
        await using var context = await content.ContextAsync(new());
        var page = await context.NewPageAsync();
        await page.SetContentAsync(Sheet());
        var pdf = await page.PdfAsync(new() { PreferCSSPageSize = true });
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(Encoding.Latin1.GetString(pdf), @"/Type\s*/Page\b"));
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        // 8.5 pt are 11.33 px.
        var smallest = await page.EvaluateAsync<double>(
            "Math.min(...[...document.querySelectorAll('main *')].map(e => parseFloat(getComputedStyle(e).fontSize)))"
        );
        Assert.True(smallest >= 11.3, $"{smallest} px");
        Assert.Equal(Group.Most, await page.Locator("table.who tbody tr").CountAsync());
    }

    [Theory]
    [InlineData(ColorScheme.Dark, 320)]
    [InlineData(ColorScheme.Light, 1280)]
    public async Task It_has_no_barrier_and_asks_for_nothing(ColorScheme scheme, int width)
    {
        await using var context = await content.Browser.NewContextAsync(
            new()
            {
                Offline = true,
                ColorScheme = scheme,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        page.Request += (_, request) => troubles.Add($"request: {request.Url}");
        page.Console += (_, message) => troubles.Add($"{message.Type}: {message.Text}");
        await page.SetContentAsync(Sheet());
        Assert.Empty(troubles);
        Assert.Empty(await Barriers.In(page));
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        );
    }

    [Fact]
    public async Task It_is_valid()
    {
        var folder = Directory.CreateTempSubdirectory("gradus-group-").FullName;
        try
        {
            var path = Path.Combine(folder, "sheet.html");
            File.WriteAllText(path, Sheet());
            Assert.Equal("", await NuCheckerTests.Check([path]));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The demonstration's evening with fourteen more of whom Maud is the pattern: each has a clearance and a dose of
    /// their own, and leaves something out.</summary>
    private static string Sheet()
    {
        var files = Repository
            .Files("content", "")
            .Select(f =>
                (Path: Path.GetRelativePath(Repository.Path("content"), f).Replace('\\', '/'), Bytes: File.ReadAllBytes(f))
            )
            .ToDictionary(f => f.Path, f => f.Bytes, StringComparer.Ordinal);
        var more = Enumerable.Range(1, Group.Most - 2).Select(n => $"maud-{n}").ToArray();
        foreach (var id in more)
        {
            foreach (var file in (string[])["client.yaml", "readings.csv"])
                files[$"clients/{id}/{file}"] = files[$"clients/maud/{file}"];
            files[$"clients/{id}/programme.md"] = Encoding.UTF8.GetBytes(
                Encoding
                    .UTF8.GetString(files["clients/maud/programme.md"])
                    .Replace(
                        "differences:\n",
                        "differences:\n  - leave-out: side-lying-chest-turn\n    in: Ankles and hips\n    because: agreed\n",
                        StringComparison.Ordinal
                    )
            );
        }

        files["groups/tuesday-evening.yaml"] = Encoding.UTF8.GetBytes(
            Encoding
                .UTF8.GetString(files["groups/tuesday-evening.yaml"])
                .Replace("[maud, piers]", $"[maud, piers, {string.Join(", ", more)}]", StringComparison.Ordinal)
        );
        var practice = PracticeReader.Read(SourceFolder.Of(files), []).Practice;
        Assert.NotNull(practice);
        var group = Assert.Single(practice.Groups);
        var (day, clients) = (group.NextFrom(new(2027, 1, 5)), group.Clients.Select(practice.Find).OfType<Client>().ToArray());
        Assert.Equal(Group.Most, clients.Length);
        return GroupHtml.Write(
            practice,
            group,
            GroupClass.Of(group, clients, day, c => Training.Of(practice, c)),
            [.. clients.Select(c => ClientReview.Of(practice, c, Training.Of(practice, c), day))]
        );
    }
}
