using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>A tempo as a client reads it.</summary>
internal static class TempoWords
{
    /// <summary>"3 s down, 1 s wait, 2 s up, 1 s wait"; fast where a beat is.</summary>
    public static string Of(Tempo tempo, Words words)
    {
        return words.Say(
            "tempo",
            ("lower", Beat(tempo.Lower)),
            ("low", Beat(tempo.PauseLow)),
            ("raise", Beat(tempo.Raise)),
            ("high", Beat(tempo.PauseHigh))
        );

        string Beat(int? seconds) => seconds is { } beat ? words.Say("beat", ("n", beat)) : words.Say("fast");
    }
}
