using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.HandingOver;

namespace Gradus.Tests.CommandLine;

/// <summary>A begun practice with two clients, Perrin and Odo, whose programme of four weeks begins on 7 December 2026, and a
/// folder for what they send.</summary>
internal sealed class ReceivingFolder : IDisposable
{
    private readonly TemporaryFolder folder;

    public ReceivingFolder(bool inMemory = false)
    {
        folder = new(inMemory);
        Assert.Equal(0, Gradus.Run("begin", Practice, "--today", "2026-12-03").Status);
        Folders.Copy(Path.Combine(Practice, "clients", "perrin"), Path.Combine(Practice, "clients", "odo"));
        var card = Path.Combine(Practice, "clients", "odo", "client.yaml");
        File.WriteAllText(card, File.ReadAllText(card).Replace("Perrin Sallow", "Odo Quill", StringComparison.Ordinal));
        var read = PracticeReader.Read(SourceFolder.Open(Practice), []).Practice!;
        (Perrin, Odo) = (KeyOf(read, "perrin"), KeyOf(read, "odo"));
    }

    public string Practice => folder["practice"];

    public string Root => folder.Root;

    /// <summary>The key of Perrin's programme.</summary>
    public string Perrin { get; }

    /// <summary>The key of Odo's programme.</summary>
    public string Odo { get; }

    public string LogOf(string client) => Path.Combine(Practice, "clients", client, "log.csv");

    /// <summary>What a client sends, as a file of that name.</summary>
    public string Sent(string name, string text)
    {
        File.WriteAllText(folder[name], text);
        return folder[name];
    }

    public string Sent(string name, params LogEntry[] entries) => Sent(name, LogWriter.Write(entries));

    public Answer Receive(params string[] words) => Gradus.Run(["receive", Practice, .. words, "--today", "2026-12-20"]);

    /// <summary>The log of a client, as the practice reads it.</summary>
    public Series<LogEntry> Kept(string client) =>
        PracticeReader.Read(SourceFolder.Open(Practice), []).Practice!.Clients.Single(c => c.Id.Text == client).Log;

    /// <summary>A session of a day in December 2026, with two exercises.</summary>
    public static LogEntry Session(string? key, int day, int number = 1) =>
        new(
            new(2026, 12, day),
            new(18, 5),
            number,
            1,
            null,
            key,
            "3f0c2a91",
            new LogOutcome.Done(),
            12,
            20,
            17.5m,
            4,
            new(0, null, null),
            null,
            null,
            null,
            null,
            [Line("calf-lean", Side.Left), Line("calf-push", null)],
            "",
            Location.Whole("")
        );

    public static LoggedExercise Line(string exercise, Side? side) =>
        new(new(exercise), side, 2, null, "", null, false, null, []);

    public void Dispose() => folder.Dispose();

    private static string KeyOf(Practice practice, string client) =>
        CourseKey.Of(practice.Clients.Single(c => c.Id.Text == client));
}
