using Gradus.Domain;

namespace Gradus.Auditing.Sources;

internal static class AttachmentReach
{
    /// <summary>Whether a caution would be added to that exercise for a client of the right age. Where there is no client yet, it
    /// would.</summary>
    public static bool Reaches(this Attachment to, Exercise exercise, Series<Client> clients) =>
        clients.Count == 0 || (to with { Age = null }).Fits(exercise, clients[0]);
}
