using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Calendars read by ical.js, and held against the plan and against the system's own zones.</summary>
public sealed class CalendarTests(PublishedContent content, ITestOutputHelper output)
{
    private static readonly SourceFolder Sources = SourceFolder.Open(Repository.Path("content"));

    private sealed record Session(string Uid, string Start, int Seconds, string Title, string Note);

    [Fact]
    public async Task Another_reader_finds_the_same_sessions_at_the_same_instants()
    {
        var practice = Practice(Sources);
        var paths = practice.Clients.Select(c =>
            Path.Combine(Path.GetDirectoryName(content.PagesOf(c.Id.Text).First()) ?? "", PagePath.Calendar)
        );
        var planned = practice.Clients.Select(c => Planned(Gradus.Tests.Planning.Planned.For(practice, c))).ToArray();
        Assert.Equal(planned, await Read([.. paths]));
        output.WriteLine($"{planned.Sum(p => p.Length)} sessions of {planned.Length} clients");
        Assert.True(planned.Sum(p => p.Length) > 50);
    }

    /// <summary>Rufus trains on Monday, Thursday and Saturday; here over the changes of clocks of March 2027 in London, of April
    /// and of September 2027 in the south.</summary>
    [Theory]
    [InlineData("Europe/London", "2027-03-15", "hour: \"18:30\"")]
    [InlineData("Europe/London", "2027-10-11", "hour: \"18:30\"")]
    [InlineData("Australia/Sydney", "2027-03-15", "hour: \"07:00\"")]
    [InlineData("Australia/Sydney", "2027-09-13", "hour: \"07:00\"")]
    [InlineData("Pacific/Auckland", "2027-03-15", "hour: \"07:15\"")]
    [InlineData("Pacific/Auckland", "2027-09-06", "hour: \"07:15\"")]
    [InlineData("Australia/Lord_Howe", "2027-03-15", "hour: \"00:30\"")]
    [InlineData("Asia/Kolkata", "2027-03-15", "hour: \"06:00\"")]
    [InlineData("Europe/London", "2027-03-15", "")]
    public async Task Another_reader_follows_the_clocks_in_both_halves_of_the_world(string zone, string start, string hour)
    {
        var practice = Practice(
            SourceFolder.Of(
                Sources.Paths.Select(path =>
                    KeyValuePair.Create(
                        path,
                        path switch
                        {
                            "clients/rufus/client.yaml" => Edited(
                                path,
                                ("zone: Europe/London", $"zone: {zone}"),
                                ("hour: \"18:30\"", hour)
                            ),
                            "clients/rufus/programme.md" => Edited(path, ("start: 2026-12-07", $"start: {start}")),
                            _ => Sources.Read(path),
                        }
                    )
                )
            )
        );
        var rufus = practice.Find(new ClientId("rufus")) ?? throw new InvalidOperationException("Nobody is called rufus.");
        var plan = Gradus.Tests.Planning.Planned.For(practice, rufus);
        var file = Path.Combine(Path.GetTempPath(), $"gradus-{Environment.ProcessId}-calendar.ics");
        var rendered = SiteRenderer.Render(plan, ThemeFolder.Plain(), [])
            ?? throw new InvalidOperationException("The site cannot be rendered.");
        await File.WriteAllBytesAsync(
            file,
            rendered.Assets.First(a => a.Path == PagePath.Calendar).Bytes.ToArray(),
            TestContext.Current.CancellationToken
        );
        try
        {
            var sessions = Assert.Single(await Read([file]));
            Assert.Equal(Planned(plan), sessions);
            var first = DateOnly.ParseExact(start, "yyyy-MM-dd", CultureInfo.InvariantCulture);
            var days = Enumerable
                .Range(0, 42)
                .Select(first.AddDays)
                .Where(d => d.DayOfWeek is DayOfWeek.Monday or DayOfWeek.Thursday or DayOfWeek.Saturday);
            var trained = sessions.Where(s => s.Title != "Measured again");
            Assert.Equal(days.Select(day => Start(day, zone, rufus.Hour)), trained.Select(s => s.Start));
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static Session[] Planned(Plan plan) =>
        [
            .. plan.Dates.Select(d => new Session(
                d.Uid,
                d.Start is { } start ? Written(start) : Written(d.Date),
                d.Start is null ? 86400 : d.Length.Value,
                d.Title,
                d.Note
            )),
        ];

    private static string Start(DateOnly day, string zone, TimeOnly? hour) =>
        hour is { } at
            ? Written(TimeZoneInfo.ConvertTimeToUtc(day.ToDateTime(at), TimeZoneInfo.FindSystemTimeZoneById(zone)))
            : Written(day);

    private static string Written(DateTime instant) =>
        instant.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

    private static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Practice Practice(SourceFolder sources) =>
        PracticeReader.Read(sources, []).Practice ?? throw new InvalidOperationException("The practice cannot be read.");

    private static byte[] Edited(string path, params (string Said, string Instead)[] edits)
    {
        var text = Encoding.UTF8.GetString(Sources.Read(path));
        foreach (var (said, instead) in edits)
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
            text = text.Replace(said, instead, StringComparison.Ordinal);
        }

        return Encoding.UTF8.GetBytes(text);
    }

    private static async Task<Session[][]> Read(string[] paths)
    {
        var start = new ProcessStartInfo("node")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Repository.Path("tests", "Browser"),
        };
        foreach (var word in (string[])["read-calendar.mjs", .. paths])
            start.ArgumentList.Add(word);
        start.Environment["TZ"] = "Pacific/Apia";
        using var reader = Process.Start(start) ?? throw new InvalidOperationException("node did not start");
        var (said, trouble) = (
            reader.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            reader.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken)
        );
        await reader.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal("", await trouble);
        return JsonSerializer.Deserialize<Session[][]>(await said, JsonSerializerOptions.Web) ?? [];
    }
}
