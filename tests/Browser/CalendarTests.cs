using System.Diagnostics;
using System.Globalization;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Every calendar of the demonstration practice read by ical.js, and held against the plan.</summary>
public sealed class CalendarTests(PublishedContent content, ITestOutputHelper output) : IClassFixture<PublishedContent>
{
    [Fact]
    public async Task Another_reader_finds_the_same_sessions_at_the_same_instants()
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice ?? throw new InvalidOperationException("The practice cannot be read.");
        var sessions = 0;
        foreach (var client in practice.Clients)
        {
            var planned = Plan.For(practice, client).Dates.Select(d => string.Join('\t', d.Uid, d.Start?.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture), d.Length.Value, d.Title)).ToArray();
            var path = Path.Combine(Path.GetDirectoryName(content.PagesOf(client.Id.Text).First()) ?? "", Plan.CalendarPath);
            Assert.Equal(planned, await Read(path));
            sessions += planned.Length;
        }

        output.WriteLine($"{sessions} sessions of {practice.Clients.Count} clients");
        Assert.True(sessions > 50);
    }

    private static async Task<string[]> Read(string path)
    {
        var start = new ProcessStartInfo("node") { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Repository.Path("tests", "Browser") };
        foreach (var word in (string[])["read-calendar.mjs", path]) start.ArgumentList.Add(word);
        using var reader = Process.Start(start) ?? throw new InvalidOperationException("node did not start");
        var (said, trouble) = (reader.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), reader.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        await reader.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal("", await trouble);
        return (await said).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
