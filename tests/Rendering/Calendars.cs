using System.Text;
using Gradus.Planning;
using Gradus.Rendering;
using Ical.Net.CalendarComponents;

namespace Gradus.Tests.Rendering;

/// <summary>calendar.ics (RFC 5545) read back by Ical.Net, a library of others.</summary>
internal static class Calendars
{
    public static byte[]? Of(Plan plan) =>
        SiteRenderer
            .Render(plan, ThemeFolder.Plain(), [])!
            .Assets.FirstOrDefault(a => a.Path == PagePath.Calendar)
            ?.Bytes.ToArray();

    public static string TextOf(Plan plan) => Text(Of(plan)!);

    public static CalendarEvent[] EventsOf(Plan plan) => Read(Of(plan)!);

    public static string Text(byte[] bytes) => new UTF8Encoding(false, true).GetString(bytes);

    public static CalendarEvent[] Read(byte[] bytes) =>
        [.. Ical.Net.Calendar.Load(Text(bytes))!.Events.OrderBy(e => e.DtStart!.Value)];

    /// <summary>Sections 3.1 and 3.6 of the standard: every line ends with CRLF, none is longer than 75 octets or empty, each is
    /// whole UTF-8 by itself, and no line could have taken the first character of the one that goes on with it.</summary>
    public static void MustBeWellFormed(byte[] bytes)
    {
        var strict = new UTF8Encoding(false, true);
        var lines = new List<byte[]>();
        var from = 0;
        for (var i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] != '\n')
                continue;
            Assert.True(i > from && bytes[i - 1] == '\r', $"Line {lines.Count + 1} does not end with CRLF.");
            lines.Add(bytes[from..(i - 1)]);
            from = i + 1;
        }

        Assert.Equal(bytes.Length, from);
        Assert.Equal("BEGIN:VCALENDAR", strict.GetString(lines[0]));
        Assert.Equal("END:VCALENDAR", strict.GetString(lines[^1]));
        foreach (var (line, index) in lines.Select((l, i) => (l, i)))
        {
            Assert.InRange(line.Length, 1, 75);
            Assert.DoesNotContain((byte)'\r', line);
            Assert.DoesNotContain(strict.GetString(line), char.IsControl);
            if (line[0] == ' ')
                Assert.True(
                    lines[index - 1].Length + strict.GetString(line).EnumerateRunes().ElementAt(1).Utf8SequenceLength > 75,
                    $"Line {index} is folded early."
                );
        }
    }

    /// <summary>The instant in UTC as the system's own zones have it, which come from another copy of the IANA database than
    /// ours: an hour that is skipped is as much later, of an hour that comes twice it is the first.</summary>
    public static DateTime Instant(string zone, DateOnly day, TimeOnly hour)
    {
        var (there, local) = (TimeZoneInfo.FindSystemTimeZoneById(zone), day.ToDateTime(hour));
        var ahead =
            there.IsInvalidTime(local) ? there.GetUtcOffset(local.AddHours(-6))
            : there.IsAmbiguousTime(local) ? there.GetAmbiguousTimeOffsets(local).Max()
            : there.GetUtcOffset(local);
        return DateTime.SpecifyKind(local - ahead, DateTimeKind.Utc);
    }

    /// <summary>Ansel's one session.</summary>
    public static LittlePractice Practice(
        string zone,
        string? hour,
        string start,
        int weeks,
        string days = "[Mon, Tue, Wed, Thu, Fri, Sat, Sun]",
        string lighter = "[]",
        string dose = "2 x hold 30 s, rest 15 s, on left"
    ) =>
        Club
            .Empty.Exercise("sway", dose)
            .Member("ansel", ["- use: sway"], weeks, lighter: lighter)
            .Edit("clients/ansel/programme.md", "    days: [Mon]", $"    days: {days}")
            .Edit("clients/ansel/programme.md", "start: 2027-01-04", $"start: {start}")
            .Edit(
                "clients/ansel/client.yaml",
                "zone: Europe/London",
                $"zone: {zone}{(hour is null ? "" : $"\nhour: \"{hour}\"")}"
            );
}
