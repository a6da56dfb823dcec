using Gradus.Domain;
using Scriban;

namespace Gradus.Rendering;

/// <summary>What the client sees: the templates of the pages, parsed once, and the files that go with every site as they are.</summary>
public sealed class Theme
{
    internal const string TemplateEnding = ".html";

    private readonly Dictionary<string, Template> templates = new(StringComparer.Ordinal);

    /// <param name="name">What the theme is called in a finding.</param>
    /// <param name="files">Its files by path; those that end in .html at the top are templates.</param>
    public Theme(string name, IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        Name = name;
        var assets = new List<Asset>();
        foreach (var (path, bytes) in files)
        {
            if (path.EndsWith(TemplateEnding, StringComparison.Ordinal) && !path.Contains('/', StringComparison.Ordinal))
                templates[path] = Template.Parse(System.Text.Encoding.UTF8.GetString(bytes), path);
            else if (!path.EndsWith(".md", StringComparison.Ordinal))
                assets.Add(new(path, bytes));
        }

        Assets = assets.ToSeries();
    }

    public string Name { get; }

    public Series<Asset> Assets { get; }

    internal Template? Find(string name) => templates.GetValueOrDefault(name);
}
