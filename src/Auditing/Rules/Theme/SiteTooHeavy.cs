using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Measured with Chromium over file:// at a sixth of the processor, as an old phone has it: a page of 60 MB takes 8.5
/// seconds to open, one of 5 MB less than one.</summary>
public sealed class SiteTooHeavy : ISiteRule
{
    private const int MiB = 1024 * 1024;
    private const int Aim = 10 * MiB,
        Heavy = 20 * MiB,
        TooHeavy = 60 * MiB;
    private const int Named = 3;

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var whole = site.Weights.Sum(w => w.Bytes);
        if (whole <= Aim)
            yield break;
        var files = site.IsInOne ? FilesOf(plan) : site.Weights;
        var heaviest = files.Where(f => f.Bytes >= MiB / 10).Take(Named).Select(f => $"'{f.Path}' {Weight(f.Bytes)}").ToArray();
        yield return this.Found(
            whole > TooHeavy ? Level.Error
                : whole > Heavy ? Level.Warning
                : Level.Note,
            plan.Client,
            Location.Whole(site.Weights[0].Path),
            $"{(site.IsInOne ? "All pages in one file" : "This site")} would have {Weight(whole)}, and "
                + $"{Said(whole)}.{(heaviest.Length > 0 ? $" Heaviest: {string.Join(", ", heaviest)}." : "")}",
            "Save these smaller: a picture 1200 pixels on its longer side, a clip of half a minute at 720 pixels."
        );
    }

    private static string Said(long whole) =>
        whole > TooHeavy ? "phones may not open more than 60"
        : whole > Heavy ? "more than 20 opens slowly on a phone"
        : "it should have 10 or less";

    /// <summary>What stands in it, as it is named in the folder.</summary>
    private static IEnumerable<WeightSeen> FilesOf(Plan plan) =>
        plan
            .Pictures.Select(p => new WeightSeen(p.Path, p.Sizes[0].WebP.Bytes.Length))
            .Concat(plan.Clips.Select(c => new WeightSeen(c.Path, c.Bytes.Length)))
            .OrderByDescending(w => w.Bytes)
            .ThenBy(w => w.Path, StringComparer.Ordinal);

    private static string Weight(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{(decimal)bytes / MiB:0.0} MiB");
}
