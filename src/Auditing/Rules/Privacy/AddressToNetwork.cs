using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class AddressToNetwork : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site
            .Pages.SelectMany(p => p.Loads)
            .Concat(site.Texts.SelectMany(t => t.Loads))
            .Where(load => !StaysInside(load, site))
            .Select(load =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    load.At,
                    $"This page asks for '{load.Address}' ({load.By}), which is no file of this site.",
                    "Put the file into the site, or take the address out: a client's page asks nobody for anything."
                )
            );

    /// <summary>Whether what is asked for is a file of this site, a place on the same page, or what is written
    /// out in the address itself: captions, and where all pages are one file pictures and clips.</summary>
    private static bool StaysInside(LoadSeen load, SiteSeen site)
    {
        if (load.By is "meta refresh" or "script" or "base href" or "iframe srcdoc")
            return false;
        if (load.Address.StartsWith("data:", StringComparison.OrdinalIgnoreCase))
            return (site.IsInOne || load.By == "track src") && IsShown(load);
        return load.Address.Length == 0 || load.Address.StartsWith('#') || site.Files.Contains(load.Address.Split('#')[0]);
    }

    /// <summary>Data that can be a page, a style or a script of its own is none.</summary>
    private static bool IsShown(LoadSeen load) =>
        load.By switch
        {
            "video src" or "source src" when Begins(load, "data:video/") => true,
            "track src" => Begins(load, "data:text/vtt;base64,"),
            _ => (Begins(load, "data:image/") || Begins(load, "data:font/"))
                && load.By.Split(' ')[0]
                    is not ("iframe" or "frame" or "object" or "embed" or "link" or "script" or "use" or "html" or "manifest"),
        };

    private static bool Begins(LoadSeen load, string with) => load.Address.StartsWith(with, StringComparison.OrdinalIgnoreCase);
}
