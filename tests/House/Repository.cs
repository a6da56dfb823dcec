namespace Gradus.Tests.House;

/// <summary>The checkout that the tests run in.</summary>
internal static class Repository
{
    public static readonly string Root = Find();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    /// <summary>All files below a folder with that ending, build output left out.</summary>
    public static IEnumerable<string> Files(string folder, string ending) =>
        Directory
            .EnumerateFiles(Path(folder), "*" + ending, SearchOption.AllDirectories)
            .Where(file =>
                !file.Contains("/.artifacts/", StringComparison.Ordinal) && !file.Contains("/obj/", StringComparison.Ordinal)
            )
            .Order(StringComparer.Ordinal);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "Publisher.sln")))
                return folder.FullName;
        return Environment.GetEnvironmentVariable("GRADUS_ROOT")
            ?? throw new InvalidOperationException("The tests run outside a checkout; set GRADUS_ROOT to it.");
    }
}
