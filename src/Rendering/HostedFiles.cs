using System.Text;
using System.Text.Json.Nodes;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>What a browser asks for where the pages are on a host: what the site is called, and which files to keep for when
/// there is no network.</summary>
internal static class HostedFiles
{
    private const string Icon = "icon.svg";

    /// <summary>W3C Web Application Manifest.</summary>
    public static Asset ManifestOf(Plan plan, Theme theme)
    {
        var about = new JsonObject
        {
            ["name"] = plan.Words.Say("site-of", ("name", plan.ClientName)),
            ["short_name"] = plan.Programme.Title,
            ["lang"] = plan.Words.Language,
            ["start_url"] = PagePath.Home,
            ["scope"] = ".",
            ["display"] = "browser",
        };
        if (theme.Brings(Icon))
            about["icons"] = new JsonArray(
                new JsonObject
                {
                    ["src"] = Icon,
                    ["type"] = "image/svg+xml",
                    ["sizes"] = "any",
                }
            );
        return new(PagePath.Manifest, Encoding.UTF8.GetBytes(about.ToJsonString() + "\n"));
    }

    public static Asset? ListOf(Theme theme, IEnumerable<Page> pages, IEnumerable<Asset> assets) =>
        theme.Brings(BuiltScript.Worker) ? new(PagePath.FileList, Encoding.UTF8.GetBytes(FileList.Of(pages, assets))) : null;
}
