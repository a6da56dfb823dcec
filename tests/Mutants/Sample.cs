using System.Security.Cryptography;
using System.Text;

namespace Gradus.Tests.Mutants;

/// <summary>Which mutants are judged: of each part so many, drawn by the hash of their names, so that the same code has the same
/// sample on every machine.</summary>
/// <param name="Parts">Folders, each with how many of its mutants are judged at most; a file belongs to the longest that it lies
/// in. What guards people comes first.</param>
internal sealed record Sample(IReadOnlyList<(string Folder, int Most)> Parts)
{
    /// <summary>Part after part, and inside of a part by the hash.</summary>
    public IEnumerable<Mutant> Of(IReadOnlyList<Mutant> found) =>
        from mutant in found
        group mutant by PartOf(mutant.File) into part
        orderby Parts.TakeWhile(p => p.Folder != part.Key).Count()
        from mutant in part.OrderBy(m => Hash(m.Name), StringComparer.Ordinal).ThenBy(m => m.Id).Take(MostOf(part.Key))
        select mutant;

    public int MostOf(string part) => Parts.Single(p => p.Folder == part).Most;

    public bool HasPart(string folder) => Parts.Any(p => p.Folder == folder);

    public string PartOf(string file) =>
        Parts
            .Select(part => part.Folder)
            .Where(folder => file.StartsWith(folder + "/", StringComparison.Ordinal))
            .MaxBy(folder => folder.Length)
        ?? throw new ArgumentException($"'{file}' lies in no part.", nameof(file));

    /// <summary>The share of a whole that a sample of it speaks for, with 95 in 100: Wilson's interval, and all of it where the
    /// whole was judged (Wilson 1927, J Am Stat Assoc 22:209-12, from memory).</summary>
    /// <param name="hits">Of the sample.</param>
    /// <param name="drawn">Size of the sample, above 0.</param>
    /// <param name="whole">What it was drawn from; a sample of much of it says more (finite population).</param>
    public static (double Low, double High) Spread(int hits, int drawn, int whole)
    {
        const double Z = 1.96;
        var left = whole <= 1 ? 0 : Math.Clamp((double)(whole - drawn) / (whole - 1), 0, 1);
        var z2 = Z * Z * left;
        var share = (double)hits / drawn;
        var middle = (share + (z2 / (2 * drawn))) / (1 + (z2 / drawn));
        var reach = Math.Sqrt(z2 * ((share * (1 - share) / drawn) + (z2 / (4.0 * drawn * drawn)))) / (1 + (z2 / drawn));
        return (middle - reach, middle + reach);
    }

    private static string Hash(string name) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(name)));
}
