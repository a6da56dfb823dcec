using System.CommandLine;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus compare FOLDER --client ID [N M]</c>, <c>gradus compare FOLDER --client ID --with
/// programmes/ID</c></summary>
internal static class CompareCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var client = new Option<string>("--client")
        {
            Description = "The client, by the name of the folder.",
            HelpName = "ID",
            Required = true,
        };
        var numbers = new Argument<int[]>("EDITION")
        {
            Description = "One edition to compare with the sources, or two; without any it is the last.",
            Arity = new(0, 2),
        };
        var with = new Option<string?>("--with")
        {
            Description = "The shared programme that the client follows: says what is the client's own.",
            HelpName = "programmes/ID",
        };
        var command = new Command(
            "compare",
            "Says what is other for a client than in an edition that was published, or than in the programme that is followed."
        )
        {
            folder,
            client,
            with,
            numbers,
        };
        command.SetAction(asked =>
            asked.GetValue(with) is { } shared
                ? RunWith(asked.GetRequiredValue(folder), asked.GetRequiredValue(client), shared)
                : Run(asked.GetRequiredValue(folder), asked.GetRequiredValue(client), asked.GetValue(numbers) ?? [])
        );
        return command;
    }

    private static int Run(string folder, string id, int[] numbers)
    {
        var read = CheckedPractice.Open(folder, [id], Clock.Today());
        if (read.Bound(new(id)) is not { } client)
            return Refuse($"{id} cannot be read; 'gradus audit {folder}' says why.");
        if (client.Editions is not [.., var last])
            return Refuse($"There is no edition of {id} yet; 'gradus publish' records the first.");
        var before = numbers.Length == 0 ? last : Named(numbers[0], client);
        if (numbers.Length == 2)
        {
            var after = Named(numbers[1], client);
            CompareText.Write(Console.Out, client.Name, before, NameOf(after), after.Content);
            return Commands.Fine;
        }

        if (read.TrainingOf(client).Refusals.Count > 0)
            return Refuse($"Nothing can be planned for {id}; 'gradus audit {folder}' says why.");
        CompareText.Write(Console.Out, client.Name, before, "the sources now", read.ContentOf(client));
        return Commands.Fine;
    }

    private static int RunWith(string folder, string id, string shared)
    {
        var read = CheckedPractice.Open(folder, [id], Clock.Today());
        if (read.Bound(new(id)) is not { } client)
            return Refuse($"{id} cannot be read; 'gradus audit {folder}' says why.");
        var asked = shared.Replace('\\', '/').Split('/')[^1];
        var programme = asked.EndsWith(".md", StringComparison.Ordinal) ? asked[..^".md".Length] : asked;
        if (client.Programme.From is not { } from)
            return Refuse($"{id} follows no shared programme.");
        if (from.Programme.Value != programme)
            return Refuse(
                $"{id} follows {SharedProgramme.PathOf(from.Programme.Value)}, and not {SharedProgramme.PathOf(programme)}."
            );
        FollowedText.Write(Console.Out, client, from);
        return Commands.Fine;
    }

    private static Edition Named(int number, Client client) =>
        client.Editions.FirstOrDefault(e => e.Number == number)
        ?? throw new IOException(
            $"There is no edition {number} of {client.Id}; there is {string.Join(", ", client.Editions.Select(e => e.Number))}."
        );

    internal static string NameOf(Edition edition) => $"edition {edition.Number} of {edition.Date.Iso()}";

    private static int Refuse(string why)
    {
        Console.Error.WriteLine("gradus: " + why);
        return Commands.ErrorsFound;
    }
}
