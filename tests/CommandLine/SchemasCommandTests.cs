using Gradus.Reading;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class SchemasCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-schemas-").FullName;

    private string Practice => Path.Combine(folder, "practice");

    private string Schemas => Path.Combine(Practice, PracticeSchemas.Folder);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Those of an earlier version give way; what else lies there stays.</summary>
    [Fact]
    public void A_practice_of_before_gets_the_schemas_that_begin_writes()
    {
        Assert.Equal(0, Gradus.Run("begin", Practice, "--today", "2026-12-03").Status);
        var begun = FolderBytes.Of(Schemas);
        Assert.Equal(PracticeSchemas.All().Select(s => s.File).Order(StringComparer.Ordinal), begun.Keys);
        File.WriteAllText(Path.Combine(Schemas, "client.schema.json"), "{}");
        File.Delete(Path.Combine(Schemas, "sport.schema.json"));
        File.WriteAllText(Path.Combine(Schemas, "mine.json"), "{}");
        var answer = Gradus.Run("schemas", Practice);
        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.StartsWith($"{Schemas}: {begun.Count} schemas.", answer.Output, StringComparison.Ordinal);
        var written = FolderBytes.Of(Schemas);
        Assert.True(written.Remove("mine.json"));
        Assert.Equal(begun, written);
    }

    /// <summary>By the way that leads there from the file.</summary>
    [Fact]
    public void Every_yaml_file_that_is_begun_names_its_schema_first()
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-03");
        Gradus.Run("new", "client", "ada-wren", "--in", Practice, "--today", "2026-12-03");
        Gradus.Run("new", "words", "fr", "--in", Practice);
        Gradus.Run("new", "words", "de", "--in", Practice);
        var files = Directory.GetFiles(Practice, "*.yaml", SearchOption.AllDirectories);
        Assert.True(files.Length >= 6, $"{files.Length} files");
        Assert.All(files, file =>
        {
            var first = File.ReadLines(file).First();
            Assert.StartsWith("# yaml-language-server: $schema=", first, StringComparison.Ordinal);
            var named = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file) ?? "", first.Split('=')[1]));
            Assert.Equal(
                Path.Combine(Schemas, PracticeSchemas.FileOf(Path.GetRelativePath(Practice, file).Replace('\\', '/')) ?? "none"),
                named
            );
            Assert.True(File.Exists(named), named);
        });
    }

    [Fact]
    public void A_folder_that_is_no_practice_is_left_alone()
    {
        var answer = Gradus.Run("schemas", folder);
        Assert.Equal(
            (2, "", $"gradus: '{folder}' is no practice: there is no practice.md in it.\n"),
            (answer.Status, answer.Output, answer.Error)
        );
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }
}
