using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>groups/ID.yaml</c> → who trains together, where and when.</summary>
internal static class GroupReader
{
    /// <param name="clients">Those who could be read.</param>
    /// <param name="known">Everybody who has a folder.</param>
    /// <param name="shared">The shared programmes by their ids; null where one could not be read.</param>
    public static Group? Read(
        SourceFile sheet,
        string id,
        Series<Client> clients,
        IReadOnlyCollection<string> known,
        IReadOnlyDictionary<string, SharedProgramme?> shared
    )
    {
        if (Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a group") is not { } fields)
            return null;
        var name = fields.NeedText("name");
        var programme = fields.NeedMention("programme") is { } from ? FollowedReader.Named(sheet, from, shared) : null;
        var session = SessionIn(fields, programme);
        var day = fields.NeedMention("day");
        var days = day is null ? [] : WeekdayWords.Of(sheet, [day]);
        var hour = HourReader.Read(fields);
        var place = fields.Text("place");
        var members = MembersIn(fields, clients, known, programme);
        fields.Done();
        return name is null || programme is null || session is null || days.Count == 0 || members.Count == 0
            ? null
            : new(id, name, members, programme, session, days[0], hour, place ?? "", sheet.Whole);
    }

    private static ProgrammeSession? SessionIn(Fields fields, SharedProgramme? programme)
    {
        var said = fields.Mention("session");
        if (programme is null)
            return null;
        var names = programme.Sessions.Select(s => s.Name).ToArray();
        if (said is null && names.Length == 1)
            return programme.Sessions[0];
        var found = programme.Sessions.FirstOrDefault(s => s.Name == said?.Value);
        if (said is null)
            fields.SourceFile.Fault(
                Faults.KeyMissing,
                fields.At,
                $"{SharedProgramme.PathOf(programme.Id)} has several sessions, and 'session' is missing.",
                $"Write the one that the group does together: {string.Join(", ", names)}."
            );
        else if (found is null)
            fields.SourceFile.Fault(
                Faults.IdUnknown,
                said.At,
                $"There is no session {Quote.Of(said.Value)} in {SharedProgramme.PathOf(programme.Id)}.",
                Nearest.Ask(said.Value, names, "Write the name of one of its sessions."),
                said.Value.Length
            );
        return found;
    }

    private static Series<ClientId> MembersIn(
        Fields fields,
        Series<Client> clients,
        IReadOnlyCollection<string> known,
        SharedProgramme? programme
    )
    {
        var written = fields.NeedTexts("clients");
        var members = new List<ClientId>();
        foreach (var one in written)
        {
            var client = clients.FirstOrDefault(c => c.Id.Text == one.Value);
            if (!known.Contains(one.Value))
                Fault(
                    Faults.IdUnknown,
                    one,
                    $"There is no client {Quote.Of(one.Value)}.",
                    Nearest.Ask(one.Value, known, "Write the name of a folder under clients/.")
                );
            else if (members.Any(m => m.Text == one.Value))
                Fault(Faults.ValueWrong, one, $"{Quote.Of(one.Value)} is named twice.", "Keep one of the two.");
            else if (programme is not null && client is not null && client.Programme.From?.Programme.Value != programme.Id)
                Fault(
                    Faults.ValueWrong,
                    one,
                    $"{Quote.Of(one.Value)} does not follow {SharedProgramme.PathOf(programme.Id)}.",
                    $"Write 'from: {programme.Id}' in clients/{one.Value}/programme.md, or take the client out of the group."
                );
            else
                members.Add(new(one.Value));
        }

        if (members.Count > Group.Most)
            Fault(
                Faults.ValueWrong,
                written[Group.Most],
                $"A group has at most {Group.Most} clients: more do not fit on one page.",
                "Write two groups."
            );
        return members.Take(Group.Most).ToSeries();

        void Fault(RuleId rule, Mention<string> one, string message, string help) =>
            fields.SourceFile.Fault(rule, one.At, message, help, one.Value.Length);
    }
}
