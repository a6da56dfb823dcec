using System.Text.Json;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A review for other programs: <c>{"today", "needs": [{"kind", "client", "says", "do"}], "stopped": [{"client", "on"}],
/// "clients": [{"client",
/// "weeks":
/// [{"week", "planned", "done", "extra", "beforePlay", "endedEarly"}], "share", "longestGap", "missed", "sets", "loads":
/// [{"week",
/// "days", "total", "atLeast", "monotony", "strain", "why"}], "pains": [{"kind", "place", "day", "level", "step", "stopped"}],
/// "effort", "moveOn", "retests", "notCounted"}]}</c>. The needs stand in the order in which they are said; planned is null where
/// the log does not say of which edition it tells; share is per cent, or null below ten planned sessions; monotony and strain are
/// null where why says so (not-covered, at-least, few-days, every-day-alike).</summary>
internal static class ReviewJson
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(Practice practice, IEnumerable<ClientReview> clients, DateOnly today)
    {
        var all = clients.ToArray();
        return JsonSerializer.Serialize(
            new
            {
                Today = today.Iso(),
                Needs = from need in all.SelectMany(r => ReviewNeed.Of(practice, r))
                orderby need.Kind
                select new
                {
                    Kind = Kebab.Of(need.Kind.ToString()),
                    Client = need.Client.Id.Text,
                    need.Says,
                    need.Do,
                },
                Stopped = all.Where(r => r.StoppedOn is not null)
                    .Select(r => new { Client = r.Client.Id.Text, On = r.StoppedOn?.Iso() }),
                Clients = all.Where(r => r.StoppedOn is null).Select(r => Client(r.Came)),
            },
            Indented
        );
    }

    private static object Client(ClientReturn came) =>
        new
        {
            Client = came.Client.Text,
            Weeks = came.Weeks.Select(w => new
            {
                Week = w.Number,
                w.Planned,
                w.Done,
                w.Extra,
                w.BeforePlay,
                EndedEarly = w.EndedEarly.Count(),
            }),
            came.Share,
            LongestGap = came.Gap is { } gap
                ? new
                {
                    From = gap.From.Iso(),
                    Until = gap.Until.Iso(),
                    gap.Days,
                    gap.Week,
                }
                : null,
            Missed = came.Missed is { } missed
                ? new
                {
                    missed.Sessions,
                    From = missed.From.Iso(),
                    Until = missed.Until.Iso(),
                }
                : null,
            Sets = came.Sets.Select(s => new
            {
                Motion = s.Motion.Name,
                Side = s.Side?.Word(),
                s.Week,
                s.Done,
                s.Planned,
            }),
            Loads = came.Loads.Select(l => new
            {
                Week = l.Number,
                l.Days,
                l.Total,
                AtLeast = l.IsAtLeast,
                l.Monotony,
                l.Strain,
                Why = l.Why is { } why ? Kebab.Of(why.ToString()) : null,
            }),
            Pains = came.Pains.Select(p => new
            {
                Kind = Kebab.Of(p.Kind.ToString()),
                Place = p.Place.Where is null ? null : p.Place.ToString(),
                Day = p.Day.Iso(),
                p.Level,
                Step = Kebab.Of(p.Step.ToString()),
                Stopped = p.Stopped.Select(s => s.Text),
            }),
            Effort = new
            {
                came.Effort.Difference,
                came.Effort.Sessions,
                TooHard = came.Effort.TooHard.Count,
            },
            MoveOn = came.MoveOn.Select(m => new
            {
                Exercise = m.Exercise?.Text,
                Stage = m.Stage is { } stage ? Kebab.Of(stage.ToString()) : null,
                m.Computed,
                Word = m.Word is { } word ? Kebab.Of(word.ToString()) : null,
                m.Asked,
            }),
            Retests = came.Retests.Select(d => new
            {
                Motion = d.Key.Motion.Name,
                Side = d.Key.Side?.Word(),
                Last = d.Latest.Last.Iso(),
                Since = d.Since.Iso(),
                Why = Kebab.Of(d.Why.ToString()),
            }),
            NotCounted = came.Log.Others.Select(o => new { Day = o.Entry.Day.Iso(), Why = Kebab.Of(o.Why.ToString()) }),
        };
}
