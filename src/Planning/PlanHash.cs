using System.Runtime.InteropServices;
using System.Security.Cryptography;

namespace Gradus.Planning;

/// <summary>A plan → a hash that is the same wherever the same is to be shown, from the same places of the same sources. It is
/// made of what each record writes of itself, which the compiler sees to, so that nothing of a new one can be forgotten; of
/// pictures and clips, which write only how long they are, the bytes are added.</summary>
internal static class PlanHash
{
    public static string Of(Plan plan)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var part in Parts(plan))
        {
            hash.AppendData(MemoryMarshal.AsBytes((part.ToString() ?? "").AsSpan()));
            hash.AppendData([0, 0]);
        }

        foreach (var file in plan.Pictures.SelectMany(p => p.Files))
            hash.AppendData(file.Bytes.Span);
        foreach (var clip in plan.Clips)
            hash.AppendData(clip.Bytes.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The plan taken apart where it is large: the whole of it in one text would be copied again and again on the way,
    /// for a third of the time of a publish in which nothing changed. What is taken out of a part comes behind it.</summary>
    private static IEnumerable<object> Parts(Plan plan)
    {
        yield return plan with
        {
            Sessions = [],
            Exercises = [],
        };
        foreach (var session in plan.Sessions)
        {
            yield return session with
            {
                Uses = [],
                Weeks = [],
            };
            foreach (var use in session.Uses)
                yield return use;
            foreach (var weeks in session.Weeks)
            {
                yield return weeks with
                {
                    Steps = [],
                };
                foreach (var step in weeks.Steps)
                    yield return step;
            }
        }

        foreach (var exercise in plan.Exercises)
            yield return exercise;
    }
}
