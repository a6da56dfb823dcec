using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>A site handed over as one page, and the forms of one site beside each other.</summary>
[Trait("Slow", "yes")]
public sealed class OneFileTests : IDisposable
{
    private readonly HandingOver.TemporaryFolder folder = new();

    private string To => folder["sites"];

    public void Dispose() => folder.Dispose();

    [Fact]
    public void It_is_published_published_again_and_read_back()
    {
        var first = Publish("file");
        Assert.Equal((0, ""), (first.Status, first.Error));
        Assert.Contains(
            $"nuala: one page, new or changed: {Path.Combine(To, "nuala.html")}\n",
            first.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(["nuala.html"], Directory.EnumerateFileSystemEntries(To).Select(Path.GetFileName).Where(n => n?[0] != '.'));
        Assert.Contains(
            $"nuala: one page, nothing changed: {Path.Combine(To, "nuala.html")}\n",
            Publish("file").Output,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Audit().Status);
        var page = Path.Combine(To, "nuala.html");
        File.WriteAllText(page, File.ReadAllText(page).Replace("PT30S", "PT31S", StringComparison.Ordinal));
        var audit = Audit();
        Assert.Equal(1, audit.Status);
        Assert.Contains("all-pages.html:", audit.Output, StringComparison.Ordinal);
        Assert.Contains("  error  time-against-text  [nuala]", audit.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_site_is_not_replaced()
    {
        Directory.CreateDirectory(To);
        var page = Path.Combine(To, "nuala.html");
        File.WriteAllText(page, "<p>A letter of the coach's own.</p>");
        var answer = Publish("file");
        Assert.Equal(
            (2, $"gradus: '{page}' is something other than a whole site. Move it away, or name another folder with --to.\n"),
            (answer.Status, answer.Error)
        );
        Assert.Equal("<p>A letter of the coach's own.</p>", File.ReadAllText(page));
    }

    /// <summary>The folder of before may hold what the client must not do any more.</summary>
    [Fact]
    public void Another_form_that_still_stands_is_named()
    {
        Assert.DoesNotContain("another form", Publish("folder").Output, StringComparison.Ordinal);
        Assert.Contains(
            $"nuala: another form is still there, as it was published before: {Path.Combine(To, "nuala")}. Publish it "
                + "again, or delete it.\n",
            Publish("zip").Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"{Path.Combine(To, "nuala")}, {Path.Combine(To, "nuala.zip")}. Publish",
            Publish("file").Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_site_of_a_client_whom_an_error_blocks_is_named_when_sites_are_judged()
    {
        Publish("file");
        Publish("folder");
        var practice = folder["practice"];
        foreach (var file in Repository.Files("content", ""))
        {
            var copy = Path.Combine(practice, Path.GetRelativePath(Repository.Path("content"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.WriteAllText(
                copy,
                File.ReadAllText(file).Replace("pain-now: 0", "pain-now: 9 whole body", StringComparison.Ordinal)
            );
        }

        var answer = Gradus.Run("audit", practice, "--site", To, "--client", "nuala", "--today", "2026-12-07");
        Assert.Equal(1, answer.Status);
        Assert.Contains(
            $"nuala: an error stands in the way, and {Path.Combine(To, "nuala")} is still there, not judged: tell the client.\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Contains($"{Path.Combine(To, "nuala.html")} is still there", answer.Output, StringComparison.Ordinal);
    }

    private Answer Publish(string form) =>
        Gradus.Run("publish", Repository.Path("content"), "--to", To, "--as", form, "--client", "nuala", "--today", "2026-12-07");

    private Answer Audit() =>
        Gradus.Run("audit", Repository.Path("content"), "--site", To, "--client", "nuala", "--today", "2026-12-07");
}
