namespace Gradus.Tests.Benchmarks;

/// <summary>The same practice with fewer programmes than clients: each written once with what a client does otherwise, or written
/// out for everybody who follows it. Both make the same sites.</summary>
internal static class MadeShared
{
    private const string Start = "start: 2026-12-07\n";

    /// <param name="programmes">At most as many as clients.</param>
    public static MadePractice Of(int clients, int programmes, bool inFull)
    {
        var made = MadePractice.Of(clients);
        for (var number = 0; number < clients; number++)
        {
            var pattern = number % programmes;
            var whole = made.Files[PathOf(pattern)];
            if (number == pattern)
                continue;
            made.Files[PathOf(number)] = inFull ? Full(whole, number, pattern) : Followed(whole, number, pattern);
        }

        for (var pattern = 0; pattern < programmes; pattern++)
        {
            var whole = made.Files[PathOf(pattern)];
            made.Files[PathOf(pattern)] = inFull ? Full(whole, pattern, pattern) : Followed(whole, pattern, pattern);
            if (!inFull)
                made.Files[$"programmes/p-{pattern}.md"] = whole
                    .Replace(Start, "", StringComparison.Ordinal)
                    .Replace(Greeting(MadeClient.NameOf(pattern).Split(' ')[0]), Greeting("{name}"), StringComparison.Ordinal);
        }

        return made;
    }

    private static string PathOf(int number) => $"clients/{MadeClient.IdOf(number)}/programme.md";

    private static string Greeting(string name) => $"\n---\n{name},\n";

    private static string Full(string whole, int number, int pattern)
    {
        var named = whole.Replace(
            Greeting(MadeClient.NameOf(pattern).Split(' ')[0]),
            Greeting(MadeClient.NameOf(number)),
            StringComparison.Ordinal
        );
        var (from, until, _) = LastOfTheFirst(named);
        return IsOther(number) ? named.Remove(from, until - from) : named;
    }

    private static string Followed(string whole, int number, int pattern)
    {
        var (_, _, use) = LastOfTheFirst(whole);
        var name = whole.Split("  - name: ")[1].Split('\n')[0];
        var differences = $"differences:\n  - leave-out: {use}\n    in: {name}\n    because: so it was agreed\n";
        return $"---\nfrom: p-{pattern}\n{Start}{(IsOther(number) ? differences : "")}---\n";
    }

    /// <summary>Every other one leaves something out.</summary>
    private static bool IsOther(int number) => number / 2 % 2 == 1;

    /// <summary>The lines of the last use of the first session, and its name.</summary>
    private static (int From, int Until, string Use) LastOfTheFirst(string whole)
    {
        const string Begins = "      - use: ";
        var end =
            whole.IndexOf("\n  - name: ", whole.IndexOf("  - name: ", StringComparison.Ordinal) + 1, StringComparison.Ordinal)
            + 1;
        var from = whole.LastIndexOf(Begins, end, StringComparison.Ordinal);
        return (from, end, whole[(from + Begins.Length)..whole.IndexOf('\n', from)]);
    }
}
