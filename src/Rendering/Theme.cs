using System.Collections.Concurrent;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Scriban;
using Scriban.Parsing;

namespace Gradus.Rendering;

/// <summary>What the client sees: the templates of the pages, parsed once, and the files that go with every site as they
/// are.</summary>
public sealed class Theme
{
    private const string TemplateEnding = PagePath.Ending;
    private const int KiB = 1024;
    private const int TemplateLimit = 256 * KiB;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly SortedDictionary<string, Template> templates = new(StringComparer.Ordinal);
    private readonly Dictionary<string, byte[]> others = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> unreadable = new(StringComparer.Ordinal);
    private readonly Lazy<Series<Asset>> assets;
    private readonly Lazy<ThemeSeen> seen;
    private readonly ConcurrentDictionary<string, Inlined> inlined = new(StringComparer.Ordinal);

    /// <param name="name">What the theme is called in a finding.</param>
    /// <param name="files">Its files by path; those that end in .html at the top are templates.</param>
    public Theme(string name, IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        Name = name;
        var all = files.ToArray();
        seen = new(() => SeenIn(name, all));
        foreach (var (path, bytes) in all)
        {
            if (path == CheckedTheme.Path)
                continue;
            if (path.EndsWith(TemplateEnding, StringComparison.Ordinal) && !path.Contains('/', StringComparison.Ordinal))
                Parse(path, bytes);
            else if (!path.EndsWith(".md", StringComparison.Ordinal))
                others[path] = bytes;
        }

        assets = new(() => AsTheyAre().Concat(Scripts()).OrderBy(a => a.Path, StringComparer.Ordinal).ToSeries());
    }

    public string Name { get; }

    /// <summary>Its files in short, and those that were checked in a browser.</summary>
    public ThemeSeen Seen => seen.Value;

    /// <summary>What goes into every site beside its pages.</summary>
    /// <exception cref="ThemeException">A script cannot be read.</exception>
    public Series<Asset> Assets => assets.Value;

    /// <summary>Whether there is such a template, readable or not.</summary>
    internal bool Has(string template) => templates.ContainsKey(template) || unreadable.ContainsKey(template);

    /// <summary>Whether there is such a file beside the templates.</summary>
    internal bool Brings(string path) => others.ContainsKey(path);

    internal bool Brings(BuiltScript script) => script.Sources.Any(Brings);

    /// <summary>A template that can be filled.</summary>
    /// <param name="asked">Where its name stands.</param>
    /// <exception cref="ThemeException">There is no such template, or it cannot be read.</exception>
    internal Template Find(string name, SourceSpan asked)
    {
        if (unreadable.TryGetValue(name, out var why))
            throw new ThemeException(
                Location.Whole(name),
                why,
                "Save it again as plain text in UTF-8, and put what is large into files beside it."
            );
        if (!templates.TryGetValue(name, out var template))
        {
            var help = Nearest.Ask(
                name,
                templates.Keys,
                "Write a file with that name; templates end in .html and lie at the top of the theme."
            );
            var message = $"There is no template '{name}'.";
            throw asked.FileName is null
                ? new ThemeException(Location.Whole(name), message, help)
                : ThemeException.In(asked, message, help);
        }

        return template.HasErrors ? throw ThemeException.In(template.Messages[0].Span, template.Messages[0].Message) : template;
    }

    /// <summary>What stands in a file beside the templates; nothing where there is no such file.</summary>
    /// <exception cref="ThemeException">It cannot be read.</exception>
    internal string Text(string path)
    {
        try
        {
            return others.TryGetValue(path, out var bytes) ? TextOf(bytes) : "";
        }
        catch (DecoderFallbackException)
        {
            throw new ThemeException(Location.Whole(path), "This file is not in UTF-8.", "Save it again as plain text in UTF-8.");
        }
    }

    /// <summary>Those of the files that it has.</summary>
    /// <exception cref="ThemeException">One cannot be read.</exception>
    internal Series<SourceText> Texts(IEnumerable<string> paths) =>
        paths.Where(Brings).Select(path => new SourceText(path, Text(path))).ToSeries();

    /// <summary>What is made of its files to stand in a page: the same for every site, and made once.</summary>
    /// <param name="what">What it is called.</param>
    /// <exception cref="ThemeException">It cannot be made.</exception>
    internal Inlined Once(string what, Func<Inlined> make) => inlined.GetOrAdd(what, _ => make());

    /// <summary>What is not in UTF-8 has letters that no style may have.</summary>
    private static Series<SourceText> OfSheet(KeyValuePair<string, byte[]>[] files) =>
        files.Any(f => f.Key == PageStyle.Sheet)
            ? (
                from path in PageStyle.OfSheet
                from file in files
                where file.Key == path
                select new SourceText(path, Encoding.UTF8.GetString(file.Value).Replace("\r\n", "\n", StringComparison.Ordinal))
            ).ToSeries()
            : [];

    private static ThemeSeen SeenIn(string name, KeyValuePair<string, byte[]>[] files)
    {
        var digest = CheckedTheme.DigestOf(files);
        var said = files.Where(f => f.Key == CheckedTheme.Path).Select(f => Encoding.UTF8.GetString(f.Value)).LastOrDefault();
        return new(
            name,
            digest,
            ThemeFolder.IsPlain(digest) ? digest
                : said is null ? null
                : CheckedTheme.DigestIn(said),
            OfSheet(files)
        );
    }

    private IEnumerable<Asset> AsTheyAre()
    {
        var sources = BuiltScript.All.SelectMany(s => s.Sources).Append(PageStyle.Sheet).ToHashSet(StringComparer.Ordinal);
        return others.Where(f => !sources.Contains(f.Key)).Select(f => new Asset(f.Key, f.Value));
    }

    private IEnumerable<Asset> Scripts() =>
        BuiltScript.OfSites.Where(Brings).Select(s => new Asset(s.Path, Encoding.UTF8.GetBytes(s.Text(Text))));

    private static string TextOf(byte[] bytes) =>
        Strict.GetString(bytes).TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal);

    private void Parse(string path, byte[] bytes)
    {
        if (bytes.Length > TemplateLimit)
        {
            unreadable[path] =
                $"This template has {(bytes.Length + KiB - 1) / KiB} KiB; the most that is read is {TemplateLimit / KiB} KiB.";
            return;
        }

        try
        {
            templates[path] = Template.Parse(TextOf(bytes), path);
        }
        catch (DecoderFallbackException)
        {
            unreadable[path] = "This template is not in UTF-8.";
        }
    }
}
