using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class MoreAfterPain : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        // Before somebody has asked again nothing is published at all.
        if (ReturnedPains.Unasked(client, training.Rules).Count > 0)
            return [];
        var isOut = ReturnedPains.Out(client, training.Rules, today).Select(p => p.Place).ToArray();
        return from hurt in HurtExercise.Of(client, training.Rules, today)
            let first = (
                from use in training.Uses
                where use.Against.Count == 0 && !isOut.Any(place => place.IsLoadedBy(use))
                let more = FirstMore(practice, client, training, today, hurt, use)
                where more is not null
                orderby more.Week.Week
                select more
            ).FirstOrDefault()
            where first is not null
            select Said(practice, client, hurt, first);
    }

    /// <summary>The first week of a use that is not over and asks more than the week in which it hurt; null where none
    /// does.</summary>
    private static More? FirstMore(
        Practice practice,
        Client client,
        Training training,
        DateOnly today,
        HurtExercise hurt,
        Use use
    )
    {
        var programme = client.Programme;
        var session = programme.AllSessions[use.Session - 1].Name;
        if (AskedThen.Of(client, training, hurt.Entry, hurt.Exercise, session) is not { } was)
            return null;
        return (
            from week in use.Weeks
            where programme.LastDayOf(week.Week) >= today
            where hurt.Line.Side is not { } side || week.Dose.Sides.All.Contains(side)
            let more = use.Exercise.Id == hurt.Exercise ? HarderDose.More(was, week.Dose, practice.Card.Settings.Dose)
            : IsHarderOf(practice, hurt.Exercise, use) ? [$"its harder version, '{practice.TitleOf(use)}'"]
            : Series<string>.Empty
            where more.Count > 0
            select new More(use, week, was, more)
        ).FirstOrDefault();
    }

    /// <summary>Whether the coach takes the harder version of it in that use, or it itself where its easier one hurt.</summary>
    private static bool IsHarderOf(Practice practice, ExerciseId exercise, Use use) =>
        practice.Find(use.Written.Exercise.Value) is { } named
        && (
            use.Version switch
            {
                ExerciseVersion.Harder => named.Id == exercise
                    || practice.VersionOf(named, ExerciseVersion.Easier)?.Id == exercise,
                null => use.Written.Versions.Count > 0 && practice.VersionOf(named, ExerciseVersion.Easier)?.Id == exercise,
                _ => false,
            }
        );

    private Finding Said(Practice practice, Client client, HurtExercise hurt, More first)
    {
        var (week, title) = (first.Week.Week, practice.Of(hurt.Exercise).Title);
        var ease = practice.Card.Settings.EaseOffAbove;
        return this.Found(
            Level.Warning,
            client.Id,
            first.Week.Line is null ? first.Use.At : first.Week.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"'{title}' {How(hurt)} on {hurt.Entry.Day.Iso()} ({hurt.Place}), when '{first.Was}' was asked; week {week} asks "
                    + $"more, '{first.Week.Dose}': {string.Join(", ", first.Harder)}."
            ),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Write a smaller dose for week {week} under 'by-week', or 'easier', until it has been done twice with no pain "
                    + $"above {ease}."
            ),
            first.Week.Line?.Line.Length ?? first.Use.Written.Exercise.Value.Text.Length
        );
    }

    /// <summary>"was ended early for sharp pain, 4 out of 10", "hurt, 4 out of 10".</summary>
    private static string How(HurtExercise hurt)
    {
        var level = hurt.Level is { } of ? string.Create(CultureInfo.InvariantCulture, $", {of} out of 10,") : "";
        return (hurt.IsStopped ? "was ended early for " + (hurt.For is { } why ? ReturnWords.Of(why) : "pain") : "hurt") + level;
    }

    /// <summary>A week that asks more of what hurt.</summary>
    /// <param name="Was">Asked when it hurt.</param>
    /// <param name="Harder">In words; at least one.</param>
    private sealed record More(Use Use, WeekDose Week, SettledDose Was, Series<string> Harder);
}
