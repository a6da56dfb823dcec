using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A class of a group as one page for the coach alone, on one sheet of A4: what everybody does, in times that all can
/// follow, and who does something else, must be asked first, and did what.</summary>
internal static class GroupHtml
{
    private static readonly string Style = BuiltIn.Text(typeof(GroupHtml).Assembly, "GroupHtml.css");

    /// <summary>Common practice, no source.</summary>
    private const string AskEverybody =
        "Ask everybody before you begin: ill today, a new pain, a new medicine or diagnosis, a fall? Whoever says yes does not "
        + "train until you know more.";

    public static string Write(Practice practice, Group group, GroupClass met, IReadOnlyList<ClientReview> reviews)
    {
        var names = NamesOf(met);
        var html = new StringBuilder();
        var hour = group.Hour is { } at ? string.Create(CultureInfo.InvariantCulture, $", {at:HH:mm}") : "";
        var place = group.Place.Length > 0 ? $", {group.Place}" : "";
        html.Append($"<p class=\"aside\">{met.Day.DayOfWeek} {met.Day.Iso()}{hour}{Escape(place)}. ")
            .Append($"{Escape(group.Session.Name)}, of {Escape(group.Programme.Title)}. ")
            .Append(Escape(Emergency(practice, met)))
            .Append("</p>\n");
        html.Append($"<p class=\"ask\">{Escape(AskEverybody)}</p>\n");
        if (string.Join("; ", StopsOf(practice, met)) is { Length: > 0 } stops)
            html.Append($"<p><strong>Stop at once:</strong> {Escape(stops)}.</p>\n");
        Parts(html, practice, met, names);
        Members(html, practice, group, met, names, reviews);
        var unread = group.Clients.Where(id => met.Members.All(m => m.Client.Id != id)).ToArray();
        if (unread.Length > 0)
            html.Append($"<p>Cannot be read, and do not train: {Escape(string.Join(", ", unread.Select(u => u.Text)))}.</p>\n");
        return CoachPage.Of(group.Name, Style, html.ToString());
    }

    /// <summary>The titles of the signs that end an exercise, of all that is done here.</summary>
    private static IEnumerable<string> StopsOf(Practice practice, GroupClass met) =>
        met
            .Members.SelectMany(m =>
                m.Does.SelectMany(d => practice.CautionsOf(practice.Of(d.Use.Exercise.Id), m.Client)).Select(practice.Find)
            )
            .OfType<Caution>()
            .Where(c => c.Kind == CautionKind.Stop)
            .Select(c => c.Title)
            .Distinct(StringComparer.Ordinal);

    private static string Emergency(Practice practice, GroupClass met)
    {
        var numbers = met
            .Members.Select(m => practice.Card.EmergencyIn(m.Client.Country.Value)?.Call)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal);
        return string.Join(" ", numbers.Select(n => $"Emergency: {n}."));
    }

    private static void Parts(StringBuilder html, Practice practice, GroupClass met, IReadOnlyDictionary<ClientId, string> names)
    {
        if (met.Parts.Count == 0)
        {
            html.Append("<h2>What everybody does</h2>\n<p>Nobody trains on this day.</p>\n");
            return;
        }

        html.Append($"<h2>What everybody does, {met.Total.Clock()}</h2>\n");
        Begin(html, "What everybody does", "what", "From", "Exercise", "How", "Longest");
        var from = 0;
        var there = met.Members.Where(m => m.Absence is null).Select(m => m.Client.Id).ToArray();
        Rounds? before = null;
        foreach (var part in met.Parts)
        {
            var goesOn = part.Rounds is not null && part.Rounds == before;
            html.Append($"<tr><td class=\"time\">{(goesOn ? "" : new Seconds(from).Clock())}</td>")
                .Append($"<th scope=\"row\">{Escape(practice.Of(ExerciseOf(part)).Title)}")
                .Append(part.Rounds is { } rounds && !goesOn ? Escape($", {N(rounds.Times)} rounds with what follows") : "")
                .Append("</th><td>")
                .Append(string.Join("<br>", HowOf(practice, part, there, names).Select(Escape)))
                .Append($"</td><td class=\"time\">{part.Seconds.Clock()}</td></tr>\n");
            before = part.Rounds;
            from += part.Seconds.Value;
        }

        html.Append(End);
    }

    /// <summary>The exercise that is shared; where nobody does it, the first that is done in its place.</summary>
    private static ExerciseId ExerciseOf(GroupPart part) =>
        (part.Does.FirstOrDefault(d => d.Use.InsteadOf is null).Use ?? part.Does[0].Use).Use.Exercise.Id;

    /// <summary>A line for each way in which it is done, what is shared first; that of most without their names.</summary>
    private static IEnumerable<string> HowOf(
        Practice practice,
        GroupPart part,
        ClientId[] there,
        IReadOnlyDictionary<ClientId, string> names
    )
    {
        var main = ExerciseOf(part);
        var ways = part
            .Does.GroupBy(d => (Exercise: d.Use.Use.Exercise.Id, Dose: DoseOf(d.Use)))
            .OrderByDescending(way => way.Key.Exercise == main)
            .ThenByDescending(way => way.Count())
            .ToArray();
        foreach (var way in ways)
        {
            var other = way.Key.Exercise == main ? "" : $"{practice.Of(way.Key.Exercise).Title}: ";
            var isUsual = way == ways[0] && way.Count() > there.Length / 2;
            var who = isUsual ? "" : $" ({string.Join(", ", way.Select(d => names[d.Client.Id]))})";
            yield return $"{other}{way.Key.Dose}{who}";
        }

        if (there.Except(part.Does.Select(d => d.Client.Id)).Select(id => names[id]).ToArray() is { Length: > 0 } waiting)
            yield return $"waits: {string.Join(", ", waiting)}";
    }

    /// <summary>As a dose line, with the name of a role in place of the side that it means for each.</summary>
    private static string DoseOf(MemberUse use)
    {
        var dose = (use.Dose.InRounds ? use.Dose.OneSet : use.Dose.Dose).AsDose;
        return use.Dose.Role is { } role
            ? DosePrinter.Print(dose with { Terms = dose.Terms with { Side = SideTerm.Of(role.Role) } })
            : DosePrinter.Print(dose);
    }

    private static void Members(
        StringBuilder html,
        Practice practice,
        Group group,
        GroupClass met,
        IReadOnlyDictionary<ClientId, string> names,
        IReadOnlyList<ClientReview> reviews
    )
    {
        html.Append("<h2>Who is there</h2>\n");
        Begin(
            html,
            "Who is there",
            "who",
            "Name",
            "Does otherwise",
            "Ask first",
            "There",
            "Effort 0–10",
            "Pain, where, 0–10",
            "Note"
        );
        foreach (var member in met.Members)
        {
            var first = FirstOf(practice, reviews.First(r => r.Client.Id == member.Client.Id), member);
            html.Append($"<tr><th scope=\"row\">{Escape(names[member.Client.Id])}")
                .Append(member.Week is { } week ? $"<small>week {N(week)}{Escape(SidesOf(member))}</small>" : "")
                .Append("</th>");
            if (member.Absence is { } absence)
                html.Append($"<td colspan=\"6\">{Lines(first.Prepend(Said(absence, member.Client, met.Day)))}</td></tr>\n");
            else
                html.Append($"<td>{Lines(OwnOf(practice, group, member))}</td>")
                    .Append($"<td>{Lines(first)}</td>")
                    .Append("<td></td><td></td><td></td><td></td></tr>\n");
        }

        html.Append(End);
    }

    private const string End = "</tbody>\n</table>\n</div>\n";

    /// <summary>A table that is wider than a small screen is moved on by itself, by keys too.</summary>
    private static void Begin(StringBuilder html, string name, string kind, params string[] columns)
    {
        html.Append($"<div class=\"wide\" role=\"region\" aria-label=\"{name}\" tabindex=\"0\">\n")
            .Append($"<table class=\"{kind}\">\n<thead><tr>");
        foreach (var column in columns)
            html.Append($"<th scope=\"col\">{column}</th>");
        html.Append("</tr></thead>\n<tbody>\n");
    }

    /// <summary>", rear leg right, weapon arm left": the roles that come up in this class.</summary>
    private static string SidesOf(GroupMember member) =>
        string.Concat(
            member
                .Does.Where(d => d.Dose.Role is not null)
                .Select(d => $", {d.Dose.Role?.Role} {d.Dose.Dose.Sides.First.Word()}")
                .Distinct(StringComparer.Ordinal)
        );

    private static IEnumerable<string> OwnOf(Practice practice, Group group, GroupMember member)
    {
        foreach (var use in member.Leaves)
            yield return $"leaves out {TitleOf(use)}";
        foreach (var does in member.Does)
        {
            var title = practice.Of(does.Use.Exercise.Id).Title;
            if (does.InsteadOf is { } other)
                yield return $"{title} instead of {TitleOf(other)}";
            if (does.IsAdded)
                yield return $"{title} too";
            if (does.Placed.By is Difference.Change change && !(change.FromWeek > member.Week))
                yield return $"{title}: own dose or side";
        }

        string TitleOf(string use) =>
            group.Session.Do.FirstOrDefault(u => u.Name == use) is { } named
            && practice.Find(named.Exercise.Value) is { } exercise
                ? exercise.Title
                : use;
    }

    /// <summary>What came back and is not answered, what ends soon, and the clearances on which what is done here
    /// rests.</summary>
    private static IEnumerable<string> FirstOf(Practice practice, ClientReview review, GroupMember member)
    {
        foreach (var need in ReviewNeed.Of(practice, review))
            if (need.Kind is NeedKind.Now or NeedKind.SameDay or NeedKind.Pain or NeedKind.Health or NeedKind.EndsSoon)
                yield return need.Says;
        if (member.Client.AnswerTo(AlwaysAsked.PainNow)?.Reply is Reply.Pains pains)
            foreach (var pain in pains.Places)
                yield return $"pain of {N(pain.Level)}, {pain.Where.On(pain.Side)}, when asked on {member.Client.Answered.Iso()}";
        var resting =
            from condition in practice.Conditions
            where member.Does.Any(d => Screening.RestsOnClearance(practice, member.Client, d.Use, condition))
            from clearance in member.Client.Clearances
            where clearance.Condition == condition.Id
            select $"{condition.Name}: cleared until {clearance.Until.Iso()}"
                + string.Concat(clearance.Limits.Select(l => ", " + l.Words));
        foreach (var rests in resting)
            yield return rests;
    }

    private static string Said(Absence absence, Client client, DateOnly day) =>
        absence switch
        {
            Absence.NotReady => "does not train: an error stands in the way, 'gradus audit' says which",
            Absence.Stopped => $"stopped on {client.Stopped?.On.Iso()}",
            Absence.NotBegun => $"not yet: the programme begins on {client.Programme.Start.Iso()}",
            Absence.Paused => $"pauses until {client.Programme.Pauses.First(p => p.Has(day)).Until.Iso()}",
            Absence.Over => $"the programme ended on {client.Programme.End.Iso()}",
            Absence.NothingToDo => "nothing of this session is done in this week",
        };

    /// <summary>First names, and whole ones where two are the same.</summary>
    private static Dictionary<ClientId, string> NamesOf(GroupClass met)
    {
        var first = met.Members.ToLookup(m => m.Client.Name.Split(' ')[0], StringComparer.Ordinal);
        return met.Members.ToDictionary(
            m => m.Client.Id,
            m => first[m.Client.Name.Split(' ')[0]].Count() > 1 ? m.Client.Name : m.Client.Name.Split(' ')[0]
        );
    }

    private static string Lines(IEnumerable<string> lines) => string.Join("; ", lines.Select(Escape));

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Escape(string text) => CoachPage.Escape(text);
}
