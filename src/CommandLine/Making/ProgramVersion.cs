using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Media;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What tells one build of the program from another: the numbers that the compiler gives each room by its
/// content.</summary>
internal static class ProgramVersion
{
    private static readonly Type[] OneOfEachRoom =
    [
        typeof(Practice),
        typeof(MediaFile),
        typeof(PracticeReader),
        typeof(Training),
        typeof(Plan),
        typeof(SiteRenderer),
        typeof(RuleBook),
        typeof(Forms),
        typeof(ProgramVersion),
    ];

    public static string Hash { get; } = TextHash.Of(OneOfEachRoom.Select(room => room.Module.ModuleVersionId.ToString()));
}
