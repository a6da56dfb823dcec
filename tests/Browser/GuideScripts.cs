using System.Text.Json.Nodes;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>The scripts of the guided session that know no page, asked by node in made time.</summary>
internal static class GuideScripts
{
    private static readonly string[] Files =
    [
        "phrases.js",
        "log-cells.js",
        "log-file.js",
        "log-message.js",
        "guide-loads.js",
        "guide-steps.js",
        "guide-cues.js",
        "guide-choice.js",
        "guide-watch.js",
    ];

    /// <summary>One timed piece, as a page's script reads it.</summary>
    internal sealed record Piece(
        string Kind,
        string Exercise,
        string Side,
        int Seconds,
        string[] Loads,
        decimal? Percent = null,
        int? Felt = null,
        int Breaths = 0
    )
    {
        public string What => $"{Kind} {Exercise} {Side}";
    }

    /// <param name="At">Milliseconds from the beginning.</param>
    internal sealed record Act(int At, string Do);

    /// <param name="Learnt">The exercises that somebody knows; null for all.</param>
    /// <param name="Ticks">When it is asked where it is.</param>
    /// <param name="Out">The exercises that are left out from the start; null for none.</param>
    internal sealed record Led(Piece[] Steps, bool Wait, string[]? Learnt, int[] Ticks, Act[] Actions, string[]? Out = null)
    {
        public string Kind => "led";
    }

    /// <param name="Cut">How often somebody was waited for with less than the whole step ahead.</param>
    internal sealed record Stand(
        string Phase,
        int At,
        int Left,
        int Ahead,
        string[] Out,
        int[] Did,
        string[] Softer,
        string[] Told,
        int Sayings,
        int Cut
    )
    {
        /// <summary>Where it stands, as one line.</summary>
        public string Line =>
            $"{Phase} {(Phase is "done" or "ended" ? 0 : At)} {Left} {Ahead} out "
            + $"{string.Join(',', Out.Order(StringComparer.Ordinal))} did {string.Join(',', Did)}";
    }

    private sealed record Asked(string[] Scripts, object[] Cases);

    /// <param name="edit">What is done to the scripts first; nothing where there is none.</param>
    public static Task<TAnswer[]> Ask<TAnswer>(IEnumerable<object> cases, Func<string, string>? edit = null) =>
        Node.AskAgain<Asked, TAnswer[]>(
            "lead-session.mjs",
            new([.. Files.Select(f => (edit ?? (text => text))(Text(f)))], [.. cases])
        );

    public static async Task<string> Ask(JsonObject asked) => (await Ask<string>([asked]))[0];

    /// <summary>Puts a slip in the place of what is written in one of the scripts, once.</summary>
    public static Func<string, string> Slip(string written, string slip)
    {
        Assert.Equal(1, Files.Sum(f => Text(f).Split(written).Length - 1));
        return text => text.Replace(written, slip, StringComparison.Ordinal);
    }

    private static string Text(string file) => File.ReadAllText(Repository.Path("themes", "plain", file));
}
