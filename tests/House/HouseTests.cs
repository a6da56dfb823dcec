namespace Gradus.Tests.House;

public sealed class HouseTests
{
    private static readonly string[] TopLevel =
    [
        "BannedSymbols.txt",
        "DEVELOPERS.md",
        "Directory.Build.props",
        "Directory.Packages.props",
        "LICENSE",
        "Publisher.sln",
        "README.md",
        "content",
        "global.json",
        "site-output-sample",
        "src",
        "tests",
        "themes",
    ];

    [Fact]
    public void The_top_level_is_the_agreed_one()
    {
        var found = Directory
            .GetFileSystemEntries(Repository.Root)
            .Select(e => Path.GetFileName(e))
            .Where(name => !name.StartsWith('.') && name != "site");
        Assert.Equal(TopLevel, found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_file_is_longer_than_300_lines()
    {
        var files = Repository
            .Files("src", ".cs")
            .Concat(Repository.Files("tests", ".cs"))
            .Concat(Repository.Files("themes", ".html"))
            .Concat(Repository.Files("themes", ".css"))
            .Concat(Repository.Files("themes", ".js"))
            .ToArray();
        Assert.True(files.Length > 100);
        Assert.All(files, file => Assert.True(File.ReadLines(file).Count() <= 300, $"{file} is longer than 300 lines"));
    }

    [Theory]
    [InlineData(".html", 30)]
    [InlineData(".css", 4)]
    [InlineData(".js", 19)]
    public void No_line_of_a_theme_has_more_than_130_letters(string ending, int files)
    {
        var found = Repository.Files("themes", ending).ToArray();
        Assert.True(found.Length >= files, $"{found.Length} files");
        Assert.Empty(
            found.SelectMany(file =>
                File.ReadLines(file)
                    .Select((line, i) => (line, At: $"{file}:{i + 1}"))
                    .Where(l => l.line.Length > 130)
                    .Select(l => l.At)
            )
        );
    }

    [Fact]
    public void No_line_of_code_is_longer_than_130_letters()
    {
        var files = Repository.Files("src", ".cs").Concat(Repository.Files("tests", ".cs")).ToArray();
        Assert.True(files.Length > 100);
        Assert.Empty(files.SelectMany(file => LongLines.In(File.ReadAllText(file)).Select(line => $"{file}:{line}")));
    }

    /// <summary>LONG stands for what makes its line 131 letters long, FITS for one letter less.</summary>
    [Theory]
    [InlineData("var a = 1; // LONG", "1")]
    [InlineData("var a = 1; // FITS", "")]
    [InlineData("var a = \"\"\"LONG\"\"\";", "1")]
    [InlineData("var a = \"\"\"\nLONG\n\"\"\";", "")]
    [InlineData("var a = $\"\"\"\"\nLONG\n\"\"\"\nLONG\n\"\"\"\";\nLONG", "6")]
    [InlineData("var a = \"\"\"\nx\n\"\"\"; LONG", "3")]
    [InlineData("var a = \"\"\"x\"\"\";\nLONG\nvar b = \"\"\"y\"\"\";", "2")]
    [InlineData("var a = @\"x\"\"\";\nLONG\nvar b = @\"y\"\"\";", "2")]
    [InlineData("var a = '\"';\nLONG\nvar b = \"\\\"\" + \"\";", "2")]
    [InlineData("// \"\"\"\nLONG\n// \"\"\"", "2")]
    public void A_long_line_is_seen_wherever_it_is_code(string code, string lines)
    {
        string Filled(string line, string mark, int length) =>
            line.Replace(mark, new string('x', Math.Max(0, length - line.Length + mark.Length)), StringComparison.Ordinal);

        var text = code.Split('\n').Select(line => Filled(Filled(line, "LONG", LongLines.Most + 1), "FITS", LongLines.Most));
        Assert.Equal(lines, string.Join(' ', LongLines.In(string.Join('\n', text))));
    }

    [Fact]
    public void Every_source_file_ends_its_lines_the_same_way()
    {
        foreach (
            var file in Repository.Files("src", "").Concat(Repository.Files("content", "")).Concat(Repository.Files("themes", ""))
        )
            if (!IsOfBytes(file))
                Assert.DoesNotContain('\r', File.ReadAllText(file));
    }

    /// <summary>Whether it is a picture or a clip.</summary>
    private static bool IsOfBytes(string file) => Path.GetExtension(file) is ".jpg" or ".png" or ".webm";

    /// <summary>What belongs to one proof alone may have a folder below those.</summary>
    [Fact]
    public void Folders_of_tests_mirror_those_of_the_code()
    {
        string[] own =
        [
            "Browser",
            "Benchmarks",
            "House",
            "Mutants",
            "Auditing/Proof",
            "CommandLine/Edits",
            "Training/Screening/Proof",
        ];
        var folders = Repository
            .Files("tests", ".cs")
            .Select(f => Path.GetRelativePath(Repository.Path("tests"), Path.GetDirectoryName(f) ?? f).Replace('\\', '/'))
            .Where(f => !own.Any(o => f == o || f.StartsWith(o + "/", StringComparison.Ordinal)))
            .Distinct()
            .ToArray();
        Assert.True(folders.Length > 20, $"{folders.Length} folders");
        Assert.All(folders, folder => Assert.True(Directory.Exists(Repository.Path("src", folder)), $"there is no src/{folder}"));
    }

    [Fact]
    public void The_words_of_readme_run()
    {
        var readme = File.ReadAllText(Repository.Path("README.md"));
        Assert.Contains("dotnet run --project src/CommandLine -- publish content --to site", readme, StringComparison.Ordinal);
        Assert.Contains("tests/run", readme, StringComparison.Ordinal);
    }
}
