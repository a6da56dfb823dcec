using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>Errors of use are one line on standard error, and the status is 2.</summary>
[Trait("Slow", "yes")]
public sealed class UseErrorTests
{
    public static TheoryData<string, string[]> Cases() =>
        new()
        {
            {
                "Unknown option '--them'. Did you mean '--theme'?",
                ["publish", Repository.Path("content"), "--to", "/tmp/never", "--them"]
            },
            {
                "Unknown option '--strict'. Options of 'publish': --to, --client, --part, --as, --passphrase, --as-link, "
                    + "--rotate, --theme, --today.",
                ["publish", Repository.Path("content"), "--to", "/tmp/never", "--strict"]
            },
            {
                "Unknown option '--verbose'. Options of 'publish': --to, --client, --part, --as, --passphrase, --as-link, "
                    + "--rotate, --theme, --today.",
                ["publish", "--verbose", Repository.Path("content"), "--to", "/tmp/never"]
            },
            { "Unknown command 'publsh'. Did you mean 'publish'?", ["publsh"] },
            {
                "Unknown command 'frobnicate'. Commands: begin, new, publish, audit, card, open, watch, compare, screen, load, "
                    + "ranges, receive, review, group, intake-sheet, figure, schemas, dose, explain.",
                ["frobnicate"]
            },
            { "Unknown word 'more'. Options of 'dose': --weeks, --lighter, --format.", ["dose", "3 x hold 30 s", "more"] },
            {
                "Say what to do: begin, new, publish, audit, card, open, watch, compare, screen, load, ranges, "
                    + "receive, review, group, intake-sheet, figure, schemas, dose, explain. 'gradus --help' tells more.",
                []
            },
            { "Option '--to' is required.", ["publish", Repository.Path("content")] },
            { "There is no folder '/no/such/folder'.", ["publish", "/no/such/folder", "--to", "/tmp/never"] },
            { $"'{Repository.Path("src")}' is no practice: there is no practice.md in it.", ["audit", Repository.Path("src")] },
            {
                $"There is no client 'rufis' in '{Repository.Path("content")}'. Did you mean 'rufus'?",
                ["audit", Repository.Path("content"), "--client", "rufis"]
            },
            {
                "'yesterday' is no day. Write year, month and day with hyphens, as 2026-12-07.",
                ["audit", Repository.Path("content"), "--today", "yesterday"]
            },
            {
                "'jsn' is not a value of --format. Did you mean 'json'?",
                ["audit", Repository.Path("content"), "--format", "jsn"]
            },
            {
                "There is no theme folder '/no/theme'.",
                ["publish", Repository.Path("content"), "--to", "/tmp/never", "--theme", "/no/theme"]
            },
            { "There is no rule 'dose-unreadible'. Did you mean 'dose-unreadable'?", ["explain", "dose-unreadible"] },
            { "--weeks goes from 1 to 104.", ["dose", "3 x hold 30 s", "--weeks", "0"] },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void An_error_of_use_is_one_line(string line, string[] words)
    {
        var answer = Gradus.RunApart([], words);
        Assert.Equal(2, answer.Status);
        Assert.Equal("", answer.Output);
        Assert.Equal($"gradus: {line}\n", answer.Error);
    }
}
