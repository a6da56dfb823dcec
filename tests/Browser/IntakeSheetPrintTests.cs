using System.Diagnostics;
using System.Text.RegularExpressions;
using Gradus.Planning;

namespace Gradus.Tests.Browser;

/// <summary>The intake sheet on paper: Chromium's PDF, its text read back with poppler's pdftotext.</summary>
public sealed class IntakeSheetPrintTests(PublishedContent content, ITestOutputHelper output)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Every_question_stands_on_one_page_with_all_its_answers(bool scripts)
    {
        await using var sheet = await OpenSheet.Open(content.Browser, new() { JavaScriptEnabled = scripts });
        var pages = await Printed(sheet);
        var found = 0;
        foreach (var (index, text) in pages.Index())
        {
            foreach (
                var question in OpenSheet.Asked.Questions.Where(q => text.Contains($" {q.Question} ", StringComparison.Ordinal))
            )
            {
                Assert.Same(OpenSheet.Asked.Questions[found++], question);
                var below = text[(text.IndexOf(question.Question, StringComparison.Ordinal) + question.Question.Length)..];
                Assert.StartsWith(
                    question.Replies switch
                    {
                        IntakeReplies.YesOrNoBySide => " No Yes, on the left Yes, on the right Yes, on both sides ",
                        IntakeReplies.Pains => " No, nothing hurts Yes: say below how much and where ",
                        _ => " No Yes ",
                    },
                    below,
                    StringComparison.Ordinal
                );
                if (question.Replies == IntakeReplies.Pains)
                    Assert.All(
                        new[] { "Place 1", "Place 2", "Place 3", "For where, choose from: head, neck, upper back," },
                        asked => Assert.Contains(asked, text, StringComparison.Ordinal)
                    );
            }

            output.WriteLine($"page {index + 1}: {found} questions so far");
        }

        Assert.Equal(OpenSheet.Asked.Questions.Count, found);
        Assert.Equal(2, pages.Length);
    }

    /// <summary>German says the same at greater length.</summary>
    [Fact]
    public async Task It_is_one_sheet_of_two_sides_in_german_too()
    {
        var german = OpenSheet.Practice with { Card = OpenSheet.Practice.Card with { Language = "de" } };
        await using var sheet = await OpenSheet.Open(content.Browser, asked: AskedSheet.Of(german));
        var pages = await Printed(sheet);
        Assert.Contains("Deine Gesundheit", pages[0], StringComparison.Ordinal);
        Assert.Equal(2, pages.Length);
    }

    [Fact]
    public async Task The_paper_has_a_place_for_the_name_and_nothing_that_only_a_screen_can_do()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        var text = string.Join(' ', await Printed(sheet));
        Assert.Contains(" Your name ", text, StringComparison.Ordinal);
        Assert.Contains(" Hand this paper to Ottoline Marsh. ", text, StringComparison.Ordinal);
        Assert.Contains("We treat both as “not answered”, never as “no”.", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("Save|Clear|browser", text);
        Assert.False(await sheet.Page.Locator(".on-paper").First.IsVisibleAsync());
    }

    [Fact]
    public async Task What_was_filled_in_is_printed_and_what_nobody_gave_is_left_for_the_pen()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        await sheet.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        const string Seen =
            "['[name=born]', '[name=answered]', '[data-where]', '[data-level]'].map(field => "
            + "getComputedStyle(document.querySelector(field)).color === 'rgba(0, 0, 0, 0)' ? 'blank' : 'shown').join(' ')";
        Assert.Equal("blank blank blank blank", await sheet.Page.EvaluateAsync<string>(Seen));
        await sheet.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Screen });
        await sheet.Page.Locator("[data-hurts]").CheckAsync();
        await sheet.Place(1, "where").SelectOptionAsync("knee");
        await sheet.Question("hernia").GetByLabel("Yes").CheckAsync();
        Assert.Contains(" knee ", string.Join(' ', await Printed(sheet)), StringComparison.Ordinal);
        await sheet.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.Equal("blank shown shown blank", await sheet.Page.EvaluateAsync<string>(Seen));
        Assert.Equal(
            "solid",
            await sheet
                .Question("hernia")
                .GetByLabel("Yes")
                .EvaluateAsync<string>(
                    "box => box.getBoundingClientRect().width <= 2 * parseFloat(getComputedStyle(box).borderLeftWidth) + "
                        + "1 ? 'solid' : 'hollow'"
                )
        );
        Assert.Equal(
            "hollow",
            await sheet
                .Question("hernia")
                .GetByLabel("No", new() { Exact = true })
                .EvaluateAsync<string>(
                    "box => box.getBoundingClientRect().width <= 2 * parseFloat(getComputedStyle(box).borderLeftWidth) + "
                        + "1 ? 'solid' : 'hollow'"
                )
        );
    }

    /// <summary>The text of each page, every gap one blank.</summary>
    private static async Task<string[]> Printed(OpenSheet sheet)
    {
        var pdf = sheet.Path + ".pdf";
        await sheet.Page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
        var start = new ProcessStartInfo("pdftotext") { RedirectStandardOutput = true };
        foreach (var word in (string[])["-raw", "-enc", "UTF-8", pdf, "-"])
            start.ArgumentList.Add(word);
        using var reader = Process.Start(start) ?? throw new InvalidOperationException("pdftotext did not start");
        var text = await reader.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await reader.WaitForExitAsync(TestContext.Current.CancellationToken);
        return [.. text.TrimEnd('\f').Split('\f').Select(page => $" {Regex.Replace(page, @"\s+", " ")} ")];
    }
}
