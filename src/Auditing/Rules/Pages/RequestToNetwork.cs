using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class RequestToNetwork : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site)
    {
        foreach (var load in site.Pages.SelectMany(p => p.Loads).Where(l => !StaysInside(l, site))) yield return Wrong(plan, load);
        foreach (var file in site.Texts)
        {
            foreach (var address in LoadParser.InStyle(file.Text).Where(a => IsStyle(file) && !IsOwn(a, site)))
                yield return Wrong(plan, new("a style", address, Location.Whole(file.Path)));
            foreach (var call in LoadParser.InScript(file.Text).Where(_ => IsScript(file)))
                yield return Wrong(plan, new("a script", call + "()", Location.Whole(file.Path)));
        }
    }

    private static bool IsStyle(TextFile file) => file.Path.EndsWith(".css", StringComparison.OrdinalIgnoreCase) || file.Path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);

    private static bool IsScript(TextFile file) => file.Path.EndsWith("js", StringComparison.OrdinalIgnoreCase);

    private static bool StaysInside(LoadSeen load, SiteReading site) =>
        load.By is not ("meta refresh" or "script" or "base href" or "iframe srcdoc") && IsOwn(load.Address, site);

    /// <summary>A file of this site, a place on the same page, or data written out in the address itself.</summary>
    private static bool IsOwn(string address, SiteReading site) =>
        address.Length == 0 || address.StartsWith('#') || address.StartsWith("data:", StringComparison.OrdinalIgnoreCase) || site.Files.Contains(address.Split('#')[0]);

    private Finding Wrong(Plan plan, LoadSeen load) => new(
        RuleId.Of(GetType()), Level.Error, plan.Client, load.At, $"This page asks for '{load.Address}' ({load.By}), which is no file of this site.",
        "Put the file into the site, or take the request out: a client's page asks nobody for anything.");
}
