using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What nobody may overlook, and what is not said while something that came back is open.</summary>
public sealed class ReviewUnsettledTests : IDisposable
{
    private const string Head =
        "date,start,session,week,kind,edition,effort,pain-before,pain-during,pain-morning,worse-next-morning,not-today,alarm,"
        + "exercise,sets\n";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-unsettled-").FullName;

    public ReviewUnsettledTests() => Folders.Copy(Repository.Path("content"), Practice);

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Days_without_a_session_are_told_with_their_reason_and_the_plan_is_not_blamed()
    {
        Write(
            "2026-12-07,18:00,1,1,full,1,4,0,0,0,no,,\n"
                + "2026-12-10,18:00,1,1,full,1,,,,,,pain,\n2026-12-12,10:00,2,1,full,1,,,,,,pain,\n"
                + "2026-12-14,18:00,1,2,full,1,,,,,,ill,\n2026-12-17,18:00,1,2,full,1,,,,,,ill,\n"
                + "2026-12-21,18:00,1,3,full,1,4,0,0,0,no,,\n"
        );
        var text = Review("2026-12-22");
        Assert.Contains("no session because of pain: 2026-12-10, 2026-12-12", text, StringComparison.Ordinal);
        Assert.Contains("no session because of illness: 2026-12-14, 2026-12-17", text, StringComparison.Ordinal);
        Assert.DoesNotContain("the plan may be too long", text, StringComparison.Ordinal);
        Assert.DoesNotContain("planned sessions running", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_goes_on_or_is_measured_while_a_sign_is_open()
    {
        const string drill = ",,1,1,,,,,,,,,,half-kneeling-ankle-rock,4\n";
        const string well =
            "2026-12-10,18:00,1,1,full,1,4,0,0,0,no,,\n2026-12-10"
            + drill
            + "2026-12-14,18:00,1,2,full,1,4,0,0,,no,,\n2026-12-14"
            + drill;
        Write(well);
        var settled = Review("2027-01-12");
        Assert.Contains("met on 2026-12-14; the rest is yours to ask", settled, StringComparison.Ordinal);
        Assert.Contains("To be measured again", settled, StringComparison.Ordinal);
        Write("2026-12-07,10:00,1,1,full,1,,,,,,,chest\n" + well);
        var open = Review("2027-01-12");
        Assert.Contains("not before what came back is settled", open, StringComparison.Ordinal);
        Assert.DoesNotContain("may go on", open, StringComparison.Ordinal);
        Assert.DoesNotContain("To be measured again", open, StringComparison.Ordinal);
    }

    /// <summary>Worse on the morning after, and again within 14 days: out for 7 days, whoever was asked meanwhile.</summary>
    [Theory]
    [InlineData("2026-12-14", 1)]
    [InlineData("2026-12-17", 1)]
    [InlineData("2026-12-18", 0)]
    public void What_was_worse_twice_is_out_for_seven_days(string today, int status)
    {
        const string worse = ",18:00,1,1,full,1,4,0,1 left knee,4 left knee,yes,,\n";
        Write("2026-12-07" + worse + "2026-12-10" + worse);
        var card = Path.Combine(Practice, "clients", "rufus", "client.yaml");
        var text = File.ReadAllText(card);
        var at = text.IndexOf("answered: ", StringComparison.Ordinal);
        File.WriteAllText(card, text.Replace(text[at..(at + 20)], "answered: 2026-12-13", StringComparison.Ordinal));
        var answer = Gradus.Run("audit", Practice, "--client", "rufus", "--today", today);
        Assert.Equal(status == 1, answer.Output.Contains("it is out until 2026-12-17", StringComparison.Ordinal));
        Assert.Equal(status, answer.Status);
    }

    private string Review(string today) => Gradus.Run("review", Practice, "--client", "rufus", "--today", today).Output;

    private void Write(string lines) => File.WriteAllText(Path.Combine(Practice, "clients", "rufus", "log.csv"), Head + lines);
}
