using System.Text.RegularExpressions;
using Gradus.CommandLine;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.HandingOver;

/// <summary>What a form is, only the form says: a fourth one needs a class and its place in the list.</summary>
public sealed class FormsTests : IDisposable
{
    private static readonly Forms WithSealed = new([.. Forms.All.InOrder, new SealedForm()]);

    private readonly TemporaryFolder folder = new();

    private string Sealed => Path.Combine(folder["sites"], "nuala.sealed");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Each_has_a_word_and_a_place_of_its_own()
    {
        Assert.Equal(["folder", "zip", "file", "locked"], Forms.All.InOrder.Select(f => f.Word));
        Assert.Equal(WithSealed.InOrder.Count, WithSealed.InOrder.Select(f => f.Ending).Distinct(StringComparer.Ordinal).Count());
        Assert.All(WithSealed.InOrder, f => Assert.True(f.Ending.Length == 0 || f.Ending[0] == '.'));
        Assert.All(WithSealed.InOrder, f => Assert.Same(f, WithSealed.Named(f.Word)));
    }

    [Fact]
    public void A_fourth_form_is_offered_by_the_command()
    {
        var option = PublishCommand.Words(WithSealed).Options.Single(o => o.Name == "--as");
        Assert.Equal("folder|zip|file|locked|sealed", option.HelpName);
        Assert.Equal(
            "How each site is handed over: as a folder, as one zip file, as one page that needs no other file, "
                + "as one page that opens with a passphrase, or as one sealed page; several with commas between them.",
            option.Description
        );
        Assert.Empty(PublishCommand.Words(WithSealed).Parse(["x", "--to", "y", "--as", "sealed"]).Errors);
        Assert.NotEmpty(PublishCommand.Words(Forms.All).Parse(["x", "--to", "y", "--as", "sealed"]).Errors);
    }

    [Fact]
    public async Task A_fourth_form_is_published_named_and_read_back_by_the_commands()
    {
        Assert.Equal(0, await Run("publish", "--to", folder["sites"], "--as", "sealed"));
        Assert.StartsWith(SealedForm.Seal, File.ReadAllText(Sealed), StringComparison.Ordinal);
        Assert.Equal([Sealed], WithSealed.Standing(new("nuala"), folder["sites"]).Select(s => s.Place));
        Assert.Equal([new("nuala")], WithSealed.Strangers(folder["sites"], []));
        Assert.Empty(Forms.All.Strangers(folder["sites"], []));

        Assert.Equal(0, await Run("audit", "--site", folder["sites"]));
        File.WriteAllText(Sealed, File.ReadAllText(Sealed).Replace("PT30S", "PT31S", StringComparison.Ordinal));
        Assert.Equal(1, await Run("audit", "--site", folder["sites"]));
    }

    /// <summary>Auditing does not see the forms, and knows inputs of the type "file".</summary>
    [Fact]
    public void No_word_of_a_form_is_compared_anywhere_else()
    {
        var files = Repository
            .Files("src", ".cs")
            .Where(f => !f.Contains("/src/HandingOver/Forms/", StringComparison.Ordinal))
            .Where(f => !f.Contains("/src/Auditing/", StringComparison.Ordinal))
            .ToArray();
        Assert.True(files.Length > 100);
        Assert.Empty(files.SelectMany(f => Compared(File.ReadAllText(f)).Select(found => $"{f}: {found}")));
    }

    [Theory]
    [InlineData("form == \"zip\"", true)]
    [InlineData("\"zip\" == form", true)]
    [InlineData("form != \"file\"", true)]
    [InlineData("form is \"folder\"", true)]
    [InlineData("form is not \"folder\"", true)]
    [InlineData("form is \"a\" or \"zip\"", true)]
    [InlineData("form switch { \"zip\" => 1 }", true)]
    [InlineData("form switch { \"zip\" or \"a\" => 1 }", true)]
    [InlineData("case \"file\":", true)]
    [InlineData("form.Equals(\"zip\", StringComparison.Ordinal)", true)]
    [InlineData("place.EndsWith(\".zip\", StringComparison.Ordinal)", true)]
    [InlineData("asked ?? \"folder\"", true)]
    [InlineData("words.Say(\"intake-saved\", (\"file\", name))", false)]
    [InlineData("fields.NeedText(\"file\")", false)]
    [InlineData("form == \"zipped\"", false)]
    public void A_comparison_is_seen(string code, bool seen) => Assert.Equal(seen, Compared(code).Any());

    private static IEnumerable<string> Compared(string code)
    {
        var word = $"\"\\.?(?:{string.Join('|', Forms.All.InOrder.Select(f => f.Word))})\"";
        var before = @"(?:==|!=|\?\?|\b(?:is|not|or|and|case)\b|\b(?:Equals|StartsWith|EndsWith|Contains)\()\s*";
        var after = @"\s*(?:==|!=|=>|\bor\b|\band\b)";
        return Regex
            .Matches(code, $"{before}{word}|{word}{after}", RegexOptions.CultureInvariant)
            .Select(found => found.Value.Trim());
    }

    private static Task<int> Run(string command, params string[] words) =>
        Commands
            .All(WithSealed)
            .RunAsync([command, Repository.Path("content"), "--client", "nuala", "--today", "2026-12-07", .. words]);
}
