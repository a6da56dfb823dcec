namespace Gradus.Domain;

/// <summary>One client's finished site, in the order of its paths (ordinal). What is audited is exactly what is handed
/// over.</summary>
public sealed record Site
{
    public Site(ClientId client, IEnumerable<Page> pages, IEnumerable<Asset> assets)
    {
        Client = client;
        Pages = pages.OrderBy(p => p.Path, StringComparer.Ordinal).ToSeries();
        Assets = assets.OrderBy(a => a.Path, StringComparer.Ordinal).ToSeries();
        var twice = Pages
            .Select(p => p.Path)
            .Concat(Assets.Select(a => a.Path))
            .GroupBy(path => path, StringComparer.OrdinalIgnoreCase)
            .FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
            throw new ArgumentException($"Two files of one site are called '{twice.Key}'.", nameof(pages));
    }

    public ClientId Client { get; }

    public Series<Page> Pages { get; }

    public Series<Asset> Assets { get; }
}

/// <summary>A finished HTML page: its path inside the site, with <c>/</c> between folders, and its text.</summary>
public sealed record Page(string Path, string Html)
{
    /// <summary>The stylesheets that a style in it was made from; none where nobody knows. They are no part of the
    /// page.</summary>
    public Aside<Series<SourceText>> Styles { get; init; } = Aside.Of(Series<SourceText>.Empty);
}

/// <summary>A file of a theme, as text with single line feeds.</summary>
public sealed record SourceText(string Path, string Text);

/// <summary>Any other file of a site: its path inside the site, and its bytes.</summary>
public sealed record Asset(string Path, ReadOnlyMemory<byte> Bytes);
