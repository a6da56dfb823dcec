using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>What lies below a folder is found without going through all others, in the order of the letters' numbers.</summary>
public sealed class SourceFolderTests
{
    private static readonly string[] Paths =
    [
        "clients/ab/client.yaml",
        "clients/a/client.yaml",
        "practice.md",
        "clients/a-b/client.yaml",
        "clients/a/editions/1.yaml",
        "clients.md",
        "clients/a/",
        "Clients/a/client.yaml",
        "exercises/ä.md",
        "zz",
    ];

    private static readonly SourceFolder Folder = SourceFolder.Of(Paths.Select(p => KeyValuePair.Create(p, Array.Empty<byte>())));

    [Fact]
    public void All_paths_stand_in_order() => Assert.Equal(Paths.Order(StringComparer.Ordinal), Folder.Paths);

    [Theory]
    [InlineData("clients/a/")]
    [InlineData("clients/a")]
    [InlineData("clients/")]
    [InlineData("clients/b/")]
    [InlineData("")]
    [InlineData("zz")]
    [InlineData("zzz")]
    [InlineData("exercises/ä")]
    [InlineData("A")]
    public void What_begins_so_is_all_there_is_and_in_order(string beginning) =>
        Assert.Equal(
            Paths.Where(p => p.StartsWith(beginning, StringComparison.Ordinal)).Order(StringComparer.Ordinal),
            Folder.Below(beginning)
        );

    [Fact]
    public void Folders_and_names_are_those_directly_in_it()
    {
        Assert.Equal(["a", "a-b", "ab"], Folder.Folders("clients").Order(StringComparer.Ordinal));
        Assert.Equal(["ä"], Folder.Names("exercises", ".md"));
        Assert.Equal(["1"], Folder.Names("clients/a/editions", ".yaml"));
    }
}
