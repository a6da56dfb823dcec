using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>How a page keeps one part of its duty: a caution, how much pain is all right, or who must leave something
/// out.</summary>
/// <param name="What">As it is called in a sentence.</param>
internal abstract record Sighting(string What, Location At)
{
    /// <summary>Whole, shown, and before the first instruction.</summary>
    public sealed record InPlace(string What, Location At) : Sighting(What, At);

    public sealed record Missing(string What, Location At) : Sighting(What, At);

    /// <param name="How">What is other than it must be, in words.</param>
    public sealed record Altered(string What, string How, Location At) : Sighting(What, At);

    /// <param name="By">What keeps somebody from it, in words.</param>
    public sealed record Hidden(string What, string By, Location At) : Sighting(What, At);

    /// <param name="Instruction">What stands before it.</param>
    public sealed record After(string What, string Instruction, Location At) : Sighting(What, At);

    /// <summary>Every part of every page's duty.</summary>
    public static IEnumerable<Sighting> Of(Plan plan, SiteSeen site)
    {
        var kinds = CautionSight.Kinds(plan);
        return Duty.Of(plan, site).SelectMany(duty => Of(duty, duty.Signs(site.Asked(plan)), kinds));
    }

    private static IEnumerable<Sighting> Of(Duty duty, PageSigns signs, Series<(CautionKind Kind, string Heading)> kinds) =>
        signs.Kinds.SelectMany(k => k.Signs).Select(s => CautionSight.Of(duty, s, kinds)).Concat(NoteSight.Of(duty, signs));
}
