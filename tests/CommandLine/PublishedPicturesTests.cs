namespace Gradus.Tests.CommandLine;

/// <summary>Pictures in folders of the practice, from the text to the client's device.</summary>
public sealed class PublishedPicturesTests : IDisposable
{
    /// <summary>Of one white pixel, PNG, and the same with a byte behind its end.</summary>
    private static readonly byte[] Pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAG7buVgAAAABJRU5ErkJggg==");
    private static readonly byte[] Other = [.. Pixel, 0];

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-pictures-").FullName;

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("folder", "perrin")]
    [InlineData("zip", "perrin.zip")]
    public void Two_pictures_whose_paths_differ_in_a_hyphen_alone_are_handed_over_side_by_side(string form, string place)
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Write("exercises/calf/lean.png", Pixel);
        Write("exercises/calf-lean.png", Other);
        var text = Path.Combine(Practice, "exercises", "calf-lean.md");
        File.AppendAllText(text, "\n![The heel is down](calf/lean.png) ![The knee is straight](calf-lean.png)\n");
        var sites = Path.Combine(folder, "sites");

        var published = Gradus.Run("publish", Practice, "--to", sites, "--as", form, "--today", "2026-12-07");
        var audited = Gradus.Run("audit", Practice, "--site", sites, "--today", "2026-12-07");

        Assert.Equal((0, 0), (published.Status, audited.Status));
        var site = Path.Combine(sites, place);
        if (form == "zip")
        {
            System.IO.Compression.ZipFile.ExtractToDirectory(site, Path.Combine(folder, "unzipped"));
            site = Directory.Exists(Path.Combine(folder, "unzipped", "perrin")) ? Path.Combine(folder, "unzipped", "perrin") : Path.Combine(folder, "unzipped");
        }

        Assert.Equal(Pixel, File.ReadAllBytes(Path.Combine(site, "pictures", "exercises", "calf", "lean.png")));
        Assert.Equal(Other, File.ReadAllBytes(Path.Combine(site, "pictures", "exercises", "calf-lean.png")));
        var page = File.ReadAllText(Path.Combine(site, "exercise-calf-lean.html"));
        Assert.Contains("<img src=\"pictures/exercises/calf/lean.png\" alt=\"The heel is down\"", page, StringComparison.Ordinal);
        Assert.Contains("<img src=\"pictures/exercises/calf-lean.png\" alt=\"The knee is straight\"", page, StringComparison.Ordinal);
    }

    private void Write(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Practice, path)) ?? Practice);
        File.WriteAllBytes(Path.Combine(Practice, path), bytes);
    }
}
