using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What is other between two editions, for the coach at the keyboard: a line for each.</summary>
internal static class CompareText
{
    public static void Write(TextWriter to, string client, Edition before, string after, EditionContent content)
    {
        var changes = EditionComparison.Of(before.Content, content);
        to.WriteLine($"{client}: {CompareCommand.NameOf(before)}, then {after}");
        if (before.Content.Programme != content.Programme)
            to.WriteLine("Another programme: it is no continuation of the one before.");
        foreach (var line in changes.SelectMany(Lines))
            to.WriteLine(line);
        if (changes.Count == 0)
            to.WriteLine("Nothing is other.");
    }

    internal static IEnumerable<string> Lines(EditionChange change) =>
        change switch
        {
            EditionChange.Titled(var before, var after) => [$"title: '{before}', then '{after}'"],
            EditionChange.Begins(var before, var after) => [$"first day: {before.Iso()}, then {after.Iso()}"],
            EditionChange.Lasts(var before, var after) => [$"weeks: {before}, then {after}"],
            EditionChange.Pauses(var before, var after) => [$"pauses: {Days(before)}, then {Days(after)}"],
            EditionChange.SessionIn(var session) => [$"session in: '{session}'"],
            EditionChange.SessionOut(var session) => [$"session out: '{session}'"],
            EditionChange.SessionNamed(var before, var session) => [$"session: '{before}' is now called '{session}'"],
            EditionChange.Days(var session, var before, var after) => [$"days of '{session}': {before}, then {after}"],
            EditionChange.Order(var session) => [$"order of '{session}': the same exercises in another order"],
            EditionChange.ExerciseIn(var session, var exercise) => [$"exercise in: {Named(exercise)}, in '{session}'"],
            EditionChange.ExerciseOut(var session, var exercise) => [$"exercise out: {Named(exercise)}, of '{session}'"],
            EditionChange.Doses(var session, var exercise, var weeks) => Each("dose", session, exercise, weeks),
            EditionChange.Sides(var session, var exercise, var weeks) => Each("side", session, exercise, weeks),
            EditionChange.DoneIn(var session, var exercise, var before, var after) =>
            [
                $"weeks of {Named(exercise)} in '{session}': {Weeks(before)}, then {Weeks(after)}",
            ],
            EditionChange.Rounds(var session, var exercise, var before, var after) =>
            [
                $"rounds of {Named(exercise)} in '{session}': {Or(before)}, then {Or(after)}",
            ],
            EditionChange.Kept(var session, var exercise, var isKept) =>
            [
                $"short version of '{session}': {Named(exercise)} is {(isKept ? "in" : "out")}",
            ],
            EditionChange.MoveOn(var session, var exercise) =>
            [
                $"move on: {Named(exercise)} in '{session}' has other conditions",
            ],
            EditionChange.Words(var exercise) => [$"words: {Named(exercise)} is described otherwise"],
            EditionChange.CautionIn(var sign) => [$"sign in: {Named(sign)}"],
            EditionChange.CautionOut(var sign) => [$"sign out: {Named(sign)}"],
            EditionChange.CautionWords(var sign, var was) when was != sign.Kind =>
            [
                $"sign: {Named(sign)} was '{Kebab.Of(was.ToString())}' and is now '{Kebab.Of(sign.Kind.ToString())}'",
            ],
            EditionChange.CautionWords(var sign, _) => [$"sign: {Named(sign)} has other words"],
            EditionChange.CautionFor(var sign, var added, var removed) =>
            [
                .. added.Select(e => $"sign: {Named(sign)} now goes for {Named(e)}"),
                .. removed.Select(e => $"sign: {Named(sign)} no longer goes for {Named(e)}"),
            ],
            EditionChange.ClearanceIn(var line) => [$"clearance in: {line}"],
            EditionChange.ClearanceOut(var line) => [$"clearance out: {line}"],
            EditionChange.RestrictionIn(var line) => [$"restriction in: {line}"],
            EditionChange.RestrictionOut(var line) => [$"restriction out: {line}"],
            EditionChange.Other(var name) => [$"other: {EditionParts.Names.FirstOrDefault(n => n.Name == name).Said ?? name}"],
            _ => throw new NotSupportedException(change.GetType().Name),
        };

    private static IEnumerable<string> Each(string what, string session, EditionExercise exercise, Series<Changed> weeks) =>
        weeks.Select(w =>
            $"{what} of {Named(exercise)} in '{session}', {(w.From == w.To ? $"week {w.From}" : $"weeks {w.From}-{w.To}")}: "
            + $"{Or(w.Before)}, then {Or(w.After)}"
        );

    private static string Named(EditionExercise exercise) => $"{exercise.Title} ({exercise.Id})";

    private static string Named(EditionCaution sign) => $"{sign.Title} ({sign.Id})";

    private static string Or(string said) => said.Length == 0 ? "none" : said;

    private static string Days(Series<Pause> pauses) =>
        pauses.Count == 0 ? "none" : string.Join(", ", pauses.Select(p => $"{p.From.Iso()} to {p.Until.Iso()}"));

    private static string Weeks(Series<int> weeks) => weeks.Count == 0 ? "none" : string.Join(", ", weeks);
}
