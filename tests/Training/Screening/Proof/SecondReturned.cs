using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>What comes back acts, a second time, from the words of the table: P0 "signs-or-symptoms is now yes: nothing until a
/// clinician's leave that is dated after this day"; "a pain answer above stop or P0-P3 makes pain-now stale: ask again before the
/// next publish"; P1 "see a clinician"; P2 "twice at one place in 14 days → clinician before it is done again"; P3 "again worse →
/// out for 7 days; again within 14 days after → clinician". It belongs to the person, whatever programme it was told
/// in.</summary>
internal static class SecondReturned
{
    /// <summary>Whether a sign stands in for the answer. The leave has its own limits and end; it is over when that came and the
    /// client was asked again.</summary>
    public static bool SignCounts(MadeClient client, ProofSlip slip) =>
        client.Said("signs-or-symptoms", slip) != "yes" && IsSignOpen(client, slip);

    /// <summary>Nobody can clear days that are over: from the day on which the client was asked again, also where the honest
    /// answer is yes.</summary>
    public static bool NeedsNoLeaveBefore(MadeClient client, ProofSlip slip) =>
        SignCounts(client, slip) || (IsSignOpen(client, slip) && IsAskedAgain(client, slip));

    private static bool IsSignOpen(MadeClient client, ProofSlip slip) =>
        slip != ProofSlip.SignsOfTheLogForgotten
        && SignDay(client, slip) is { } day
        && !client.Clearances.Any(c => c.Condition == "signs-or-symptoms" && c.On > day && c.Until < client.Answered);

    public static bool IsAskedAgain(MadeClient client, ProofSlip slip) => client.Answered > SignDay(client, slip);

    /// <summary>The first day on which a leave can have known of everything.</summary>
    public static DateOnly LeaveFrom(MadeClient client, ProofSlip slip)
    {
        if (slip == ProofSlip.LeaveFromBeforeTheSign || slip == ProofSlip.SignsOfTheLogForgotten)
            return client.Answered;
        var day = SignDay(client, slip);
        var own = client.Said("signs-or-symptoms", slip) == "yes";
        if (
            day is null
            || client.Clearances.Any(c => c.Condition == "signs-or-symptoms" && c.On > day && c.Until < client.Answered)
        )
            return client.Answered;
        return own && client.Answered > day ? client.Answered : day.Value.AddDays(1);
    }

    /// <summary>Kinds against one exercise, as "back stale" and "back clinician".</summary>
    public static IEnumerable<string> Kinds(MadeClient client, MadeDone done, ProofSlip slip)
    {
        var rows = Rows(client, slip).ToArray();
        if (slip != ProofSlip.PainThatCameBackForgotten && rows.Any(r => IsUnasked(client, r.Entry, slip)))
        {
            yield return "back stale";
            yield break;
        }

        if (slip == ProofSlip.NoClinicianAfterwards)
            yield break;
        foreach (var (entry, row, place) in rows.Where(r => r.Row == 1))
            if (!IsSeen(client, entry))
            {
                yield return "back clinician";
                yield break;
            }

        foreach (var (entry, row, place) in Repeated(rows, slip))
            if (!IsSeen(client, entry) && Loads(done, place, slip))
            {
                yield return "back clinician";
                yield break;
            }
    }

    private static bool IsUnasked(MadeClient client, MadeEntry entry, ProofSlip slip) =>
        slip == ProofSlip.AskedOnTheDayIsEnough ? entry.Day > client.Answered : entry.Day >= client.Answered;

    private static bool IsSeen(MadeClient client, MadeEntry entry) =>
        client.Clearances.Any(c => c.Condition == "pain-now" && c.On > entry.Day);

    private static DateOnly? SignDay(MadeClient client, ProofSlip slip) =>
        client.Log.Where(e => IsSign(e, slip)).Select(e => (DateOnly?)e.Day).DefaultIfEmpty(null).Max();

    private static bool IsSign(MadeEntry entry, ProofSlip slip) =>
        entry.Alarm != ""
        || (
            slip != ProofSlip.ChestOfTheLogIsPain
            && new[] { entry.Before, entry.During, entry.Morning }.Any(p => p.EndsWith("chest", StringComparison.Ordinal))
        );

    /// <summary>Each entry that is one of the rows 0 to 3, or above the stop, with its place.</summary>
    private static IEnumerable<(MadeEntry Entry, int Row, string Place)> Rows(MadeClient client, ProofSlip slip)
    {
        foreach (var entry in client.Log)
        {
            if (IsSign(entry, slip))
                yield return (entry, 0, "chest");
            var (before, during, morning) = (Level(entry.Before), Level(entry.During), Level(entry.Morning));
            var place = PlaceOf(entry);
            if (entry.Stopped is "numb" or "snap" or "swollen" or "no-weight" && slip != ProofSlip.GraveStopIsNone)
                yield return (entry, 1, place);
            if (during > 5 || entry.Stopped is "sharp" or "giving-way")
                yield return (entry, 2, place);
            if (morning > Math.Max(before, 2) || morning >= before + 2 || entry.Worse == "yes")
                yield return (entry, 3, place);
            else if (before > 5 || morning > 5)
                yield return (entry, 4, place);
        }
    }

    private static IEnumerable<(MadeEntry Entry, int Row, string Place)> Repeated(
        (MadeEntry Entry, int Row, string Place)[] rows,
        ProofSlip slip
    )
    {
        foreach (var places in rows.Where(r => r.Row == 2).GroupBy(r => r.Place))
        foreach (var (one, next) in places.Zip(places.Skip(1)))
            if (Days(one.Entry, next.Entry) <= (slip == ProofSlip.TwiceWithinAWeekOnly ? 7 : 14))
                yield return next;
        foreach (var places in rows.Where(r => r.Row == 3).GroupBy(r => r.Place))
        {
            var (times, last) = (0, (MadeEntry?)null);
            foreach (var row in places)
            {
                var within = times > 1 ? 21 : 14;
                times = last is not null && Days(last, row.Entry) <= within ? times + 1 : 1;
                last = row.Entry;
                if (times >= 3)
                    yield return row;
            }
        }
    }

    private static bool Loads(MadeDone done, string place, ProofSlip slip)
    {
        var loaded = new SecondLoads(done, slip);
        var words = place.Split(' ');
        return words.Length == 1
            ? loaded.On(place).Length > 0 || loaded.Stands(place)
            : loaded.Stands(words[1]) || loaded.On(words[1]).Contains(words[0]);
    }

    private static int Days(MadeEntry one, MadeEntry next) => next.Day.DayNumber - one.Day.DayNumber;

    private static int Level(string pain) => int.Parse(pain.Split(' ')[0], CultureInfo.InvariantCulture);

    /// <summary>The only one that the entry names, the chest left out where it is.</summary>
    private static string PlaceOf(MadeEntry entry) =>
        new[] { entry.During, entry.Morning, entry.Before }
            .Where(p => p.Contains(' ', StringComparison.Ordinal))
            .Select(p => p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..])
            .FirstOrDefault("");
}
