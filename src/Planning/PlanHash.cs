using System.Security.Cryptography;
using System.Text;

namespace Gradus.Planning;

/// <summary>A plan → a hash that is the same wherever the same is to be shown, from the same places of the same sources. It is
/// made of what each record writes of itself, which the compiler sees to, so that nothing of a new one can be forgotten; of
/// pictures and clips, which write only how long they are, the bytes are added.</summary>
internal static class PlanHash
{
    public static string Of(Plan plan)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(plan.ToString()));
        foreach (var file in plan.Pictures.SelectMany(p => p.Files))
            hash.AppendData(file.Bytes.Span);
        foreach (var clip in plan.Clips)
            hash.AppendData(clip.Bytes.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
