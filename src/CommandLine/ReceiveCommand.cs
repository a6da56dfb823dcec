using System.CommandLine;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus receive FOLDER FILE...</c></summary>
internal static class ReceiveCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var files = new Argument<string[]>("FILE")
        {
            Description =
                "What clients sent: logs that their page saved, messages as text, or folders of these (.csv and .txt). Without "
                + "any, or with -, what is pasted or piped in.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var client = new Option<string?>("--client")
        {
            Description = "Whose it is, where the log does not say it; a log that is somebody else's is refused.",
            HelpName = "ID",
        };
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var today = Options.Today();
        var command = new Command(
            "receive",
            "Takes in what clients noted of their sessions: each goes to its client's log.csv, behind what stands there. The "
                + "same may be received again: what is known is not written twice. Status 1 where something was refused or "
                + "could not be read."
        )
        {
            folder,
            files,
            client,
            format,
            today,
        };
        command.SetAction(asked =>
            Run(
                asked.GetRequiredValue(folder),
                asked.GetValue(files) ?? [],
                asked.GetValue(client),
                asked.GetValue(format) == "json",
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(string folder, string[] files, string? wanted, bool asJson, DateOnly today)
    {
        var practice = ReceivingPractice.Open(folder, wanted);
        var readings = LogSources.Of(files).Select(source => (source.Name, Reading: source.Read())).ToArray();
        var owned = readings.SelectMany(r => practice.Owned(r.Name, r.Reading)).ToArray();
        var additions = new Dictionary<ClientId, LogAddition>();
        try
        {
            var owners = owned.Where(o => o.Taken.Count > 0).Select(o => o.Owner).OfType<Client>().DistinctBy(c => c.Id);
            foreach (var owner in owners.OrderBy(c => c.Id.Text, StringComparer.Ordinal))
                additions[owner.Id] = LogAddition.Begin(folder, owner);
            var received = owned
                .Select(o => ReceivedLog.Of(o, o.Owner is { } c ? additions.GetValueOrDefault(c.Id) : null, today))
                .ToSeries();
            // Before anything is written: who is cut off here is told the same when it is received again.
            if (!asJson)
                ReceiveText.WriteUrgent(Console.Out, received);
            foreach (var addition in additions.Values)
                addition.Prepare();
            foreach (var addition in additions.Values)
                addition.Write();
            if (asJson)
                Console.Out.WriteLine(ReceiveJson.Write(received));
            else
                ReceiveText.Write(Console.Out, received);
            return received.All(r => r.IsWhole) ? Commands.Fine : Commands.ErrorsFound;
        }
        finally
        {
            foreach (var addition in additions.Values)
                addition.Dispose();
        }
    }
}
