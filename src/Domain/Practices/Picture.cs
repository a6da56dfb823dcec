namespace Gradus.Domain;

/// <summary>A picture of the practice, ready to be handed over: upright, in sRGB, on white, without what a camera or a program
/// noted in it.</summary>
/// <param name="Path">Inside the practice, with <c>/</c> between folders.</param>
/// <param name="Sizes">The smallest first; at least one.</param>
public sealed record Picture(string Path, Series<PictureSize> Sizes)
{
    /// <summary>Where the files of every picture stand in a site.</summary>
    public const string Folder = "pictures/";

    public IEnumerable<Asset> Files => Sizes.SelectMany(s => s.Files);
}

/// <summary>A picture in one size, under its paths in a site.</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Jpeg">For browsers that show no WebP: of the smallest size, where a form of the site has both.</param>
public sealed record PictureSize(int Width, int Height, Asset WebP, Asset? Jpeg)
{
    public IEnumerable<Asset> Files => Jpeg is null ? [WebP] : [WebP, Jpeg];
}
