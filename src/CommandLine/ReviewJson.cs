using System.Text.Json.Nodes;
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
    public static string Write(Practice practice, IEnumerable<ClientReview> clients, DateOnly today)
    {
        var all = clients.ToArray();
        return JsonText.Of(
            new JsonObject
            {
                ["today"] = today.Iso(),
                ["needs"] = JsonText.ListOf(
                    all.SelectMany(r => ReviewNeed.Of(practice, r)).OrderBy(need => need.Kind),
                    need => new JsonObject
                    {
                        ["kind"] = Kebab.Of(need.Kind.ToString()),
                        ["client"] = need.Client.Id.Text,
                        ["says"] = need.Says,
                        ["do"] = need.Do,
                    }
                ),
                ["stopped"] = JsonText.ListOf(all.Where(r => r.StoppedOn is not null), r => new JsonObject
                {
                    ["client"] = r.Client.Id.Text,
                    ["on"] = r.StoppedOn?.Iso(),
                }),
                ["clients"] = JsonText.ListOf(all.Where(r => r.StoppedOn is null), r => Client(r.Came)),
            }
        );
    }

    private static JsonObject Client(ClientReturn came) =>
        new()
        {
            ["client"] = came.Client.Text,
            ["weeks"] = JsonText.ListOf(came.Weeks, w => new JsonObject
            {
                ["week"] = w.Number,
                ["planned"] = w.Planned,
                ["done"] = w.Done,
                ["extra"] = w.Extra,
                ["beforePlay"] = w.BeforePlay,
                ["endedEarly"] = w.EndedEarly.Count(),
            }),
            ["share"] = came.Share,
            ["longestGap"] = came.Gap is { } gap
                ? new JsonObject
                {
                    ["from"] = gap.From.Iso(),
                    ["until"] = gap.Until.Iso(),
                    ["days"] = gap.Days,
                    ["week"] = gap.Week,
                }
                : null,
            ["missed"] = came.Missed is { } missed
                ? new JsonObject
                {
                    ["sessions"] = missed.Sessions,
                    ["from"] = missed.From.Iso(),
                    ["until"] = missed.Until.Iso(),
                }
                : null,
            ["sets"] = JsonText.ListOf(came.Sets, s => new JsonObject
            {
                ["motion"] = s.Motion.Name,
                ["side"] = s.Side?.Word(),
                ["week"] = s.Week,
                ["done"] = s.Done,
                ["planned"] = s.Planned,
            }),
            ["loads"] = JsonText.ListOf(came.Loads, l => new JsonObject
            {
                ["week"] = l.Number,
                ["days"] = JsonText.ListOf(l.Days, d => d),
                ["total"] = l.Total,
                ["atLeast"] = l.IsAtLeast,
                ["monotony"] = l.Monotony,
                ["strain"] = l.Strain,
                ["why"] = l.Why is { } why ? Kebab.Of(why.ToString()) : null,
            }),
            ["pains"] = JsonText.ListOf(came.Pains, p => new JsonObject
            {
                ["kind"] = Kebab.Of(p.Kind.ToString()),
                ["place"] = p.Place.Where is null ? null : p.Place.ToString(),
                ["day"] = p.Day.Iso(),
                ["level"] = p.Level,
                ["step"] = Kebab.Of(p.Step.ToString()),
                ["stopped"] = JsonText.ListOf(p.Stopped, s => s.Text),
            }),
            ["effort"] = new JsonObject
            {
                ["difference"] = came.Effort.Difference,
                ["sessions"] = came.Effort.Sessions,
                ["tooHard"] = came.Effort.TooHard.Count,
            },
            ["moveOn"] = JsonText.ListOf(came.MoveOn, m => new JsonObject
            {
                ["exercise"] = m.Exercise?.Text,
                ["stage"] = m.Stage is { } stage ? Kebab.Of(stage.ToString()) : null,
                ["computed"] = JsonText.ListOf(m.Computed),
                ["word"] = m.Word is { } word ? Kebab.Of(word.ToString()) : null,
                ["asked"] = JsonText.ListOf(m.Asked),
            }),
            ["retests"] = JsonText.ListOf(came.Retests, d => new JsonObject
            {
                ["motion"] = d.Key.Motion.Name,
                ["side"] = d.Key.Side?.Word(),
                ["last"] = d.Latest.Last.Iso(),
                ["since"] = d.Since.Iso(),
                ["why"] = Kebab.Of(d.Why.ToString()),
            }),
            ["notCounted"] = JsonText.ListOf(came.Log.Others, o => new JsonObject
            {
                ["day"] = o.Entry.Day.Iso(),
                ["why"] = Kebab.Of(o.Why.ToString()),
            }),
        };
}
