namespace Gradus.Domain;

public static class LogFile
{
    /// <summary>What came back from a client, by the name under which the practice keeps it beside client.yaml.</summary>
    public const string Name = "log.csv";

    public static string PathOf(ClientId client) => $"clients/{client}/{Name}";
}
