using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class RequestToNetwork : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) =>
        site.Pages.SelectMany(p => p.Loads).Concat(site.Texts.SelectMany(t => t.Loads)).Where(load => !StaysInside(load, site)).Select(load => new Finding(
            RuleId.Of(GetType()), Level.Error, plan.Client, load.At, $"This page asks for '{load.Address}' ({load.By}), which is no file of this site.",
            "Put the file into the site, or take the request out: a client's page asks nobody for anything."));

    /// <summary>Whether what is asked for is a file of this site, a place on the same page, or a picture written out in the address itself.</summary>
    private static bool StaysInside(LoadSeen load, SiteReading site)
    {
        if (load.By is "meta refresh" or "script" or "base href" or "iframe srcdoc") return false;
        if (load.Address.StartsWith("data:", StringComparison.OrdinalIgnoreCase)) return IsPicture(load);
        return load.Address.Length == 0 || load.Address.StartsWith('#') || site.Files.Contains(load.Address.Split('#')[0]);
    }

    /// <summary>Data that can be a page, a style or a script of its own is none.</summary>
    private static bool IsPicture(LoadSeen load) =>
        (load.Address.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase) || load.Address.StartsWith("data:font/", StringComparison.OrdinalIgnoreCase))
        && load.By.Split(' ')[0] is not ("iframe" or "frame" or "object" or "embed" or "link" or "script");
}
