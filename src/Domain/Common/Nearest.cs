namespace Gradus.Domain;

/// <summary>Finds the word that somebody probably meant.</summary>
public static class Nearest
{
    /// <summary>The known word with the fewest letters to change, add, drop or swap; null where none is near (more than a third
    /// of the longer word, at least one letter). Of equals, the first.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        var written = word.ToLowerInvariant();
        string? nearest = null;
        var fewest = int.MaxValue;
        foreach (var candidate in known)
        {
            var changes = Changes(written, candidate.ToLowerInvariant());
            if (changes >= fewest || changes > Math.Max(1, Math.Max(written.Length, candidate.Length) / 3))
                continue;
            (nearest, fewest) = (candidate, changes);
        }

        return nearest;
    }

    /// <summary>"Did you mean 'x'?", or what else to do where nothing is near.</summary>
    public static string Ask(string word, IEnumerable<string> known, string otherwise) =>
        To(word, known) is { } nearest ? $"Did you mean '{nearest}'?" : otherwise;

    /// <summary>The optimal string alignment distance.</summary>
    private static int Changes(string a, string b)
    {
        if (a.Length > 64 || b.Length > 64)
            return string.Equals(a, b, StringComparison.Ordinal) ? 0 : int.MaxValue;
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
