using System.Text.RegularExpressions;
using Gradus.HandingOver;

namespace Gradus.Tests.CommandLine;

/// <summary>Locked pages as a coach makes and opens them.</summary>
public sealed partial class LockedCommandTests : IDisposable
{
    private readonly SentFolder sent = new();

    private string Locked => Path.Combine(sent.To, "tess.locked.html");

    public void Dispose() => sent.Dispose();

    [GeneratedRegex("^  It opens with: ((?:[a-z]{4,8} ?){6})$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Shown();

    [GeneratedRegex("(?<=id=\"locked\">)[^<]+(?=</script>)", RegexOptions.CultureInvariant)]
    private static partial Regex Sealed();

    [Fact]
    public void Six_words_are_shown_once_open_the_page_and_stand_in_no_file()
    {
        var answer = sent.Publish("--as", "locked,file", "--client", "tess");
        Assert.Equal(0, answer.Status);
        var words = Shown().Match(answer.Output).Groups[1].Value;
        Assert.Equal(6, words.Split(' ').Length);
        foreach (var file in Directory.EnumerateFiles(sent[""], "*", SearchOption.AllDirectories))
            Assert.DoesNotContain(words, File.ReadAllText(file), StringComparison.Ordinal);

        var opened = Gradus.RunPiped(words + "\n", "open", Locked, "--to", sent["opened.html"]);
        Assert.Equal((0, ""), (opened.Status, opened.Error));
        Assert.Equal(File.ReadAllBytes(Path.Combine(sent.To, "tess.html")), File.ReadAllBytes(sent["opened.html"]));
        // Random letters spell any name of four now and then; what names nobody is the page around them.
        var locked = File.ReadAllText(Locked);
        Assert.Single(Sealed().Matches(locked));
        var around = Sealed().Replace(locked, "");
        Assert.DoesNotContain("Tess", around, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http://", around, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("https://", around, StringComparison.OrdinalIgnoreCase);

        var again = sent.Publish("--as", "locked", "--client", "tess");
        Assert.DoesNotMatch(Shown(), again.Output);
        Assert.Contains("nothing changed; it opens with the passphrase that it had", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_changed_the_file_stays_and_where_something_did_it_is_another()
    {
        sent.Publish("--as", "locked", "--client", "tess");
        var first = File.ReadAllBytes(Locked);
        // Nothing that a page is made from: not even a record of what was made is needed to know it.
        sent.Publish("--as", "locked", "--client", "tess");
        Assert.Equal(first, File.ReadAllBytes(Locked));

        sent.Edit("practice.md", "coach: ", "coach: Dr ");
        Assert.Matches(Shown(), sent.Publish("--as", "locked", "--client", "tess").Output);
        Assert.NotEqual(first, File.ReadAllBytes(Locked));
    }

    [Fact]
    public void Other_words_are_made_where_they_are_asked_for()
    {
        sent.Publish("--as", "locked", "--client", "tess");
        var first = File.ReadAllBytes(Locked);
        Assert.Matches(Shown(), sent.Publish("--as", "locked", "--client", "tess", "--passphrase", "anew").Output);
        Assert.NotEqual(first, File.ReadAllBytes(Locked));
        Assert.Contains("nothing changed", sent.Publish("--as", "locked", "--client", "tess").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coachs_own_passphrase_is_asked_for_and_not_shown()
    {
        var answer = sent.Piped("we meet at the Old Weir\n", "--as", "locked", "--client", "tess", "--passphrase", "ask");
        Assert.Equal(0, answer.Status);
        Assert.DoesNotContain("Weir", answer.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(0, Gradus.RunTyped("We meet at the old weir", "open", Locked, "--to", sent["opened.html"]).Status);
    }

    [Theory]
    [InlineData("   \n", "Nothing but blanks is no passphrase.")]
    [InlineData("weir\n", "The passphrase has 4 letters, 4 of them different.")]
    [InlineData("", "A passphrase is asked for, and there is no line to take it from.")]
    public void One_that_will_not_do_leaves_everything_as_it_was(string typed, string sentence)
    {
        sent.Publish("--as", "locked", "--client", "tess");
        var first = File.ReadAllBytes(Locked);
        var answer = sent.Piped(typed, "--as", "locked", "--client", "tess", "--passphrase", "ask");
        Assert.Equal(2, answer.Status);
        Assert.StartsWith($"gradus: {sentence}", answer.Error, StringComparison.Ordinal);
        Assert.Equal(first, File.ReadAllBytes(Locked));
    }

    [Fact]
    public void The_audit_knows_it_by_its_bytes_and_with_the_passphrase_by_what_is_in_it()
    {
        sent.Piped("we meet at the old weir\n", "--as", "locked", "--client", "tess", "--passphrase", "ask");
        Assert.Equal(0, Audit("").Status);
        Assert.Equal(0, Audit("we meet at the old weir\n", "--passphrase", "ask").Status);
        var wrong = Audit("we meet at the new weir\n", "--passphrase", "ask");
        Assert.Equal(2, wrong.Status);
        Assert.StartsWith("gradus: This passphrase does not open the file.", wrong.Error, StringComparison.Ordinal);

        // Its own page is made to send the passphrase somewhere.
        File.WriteAllText(
            Locked,
            File.ReadAllText(Locked).Replace("default-src 'none'", "default-src https:", StringComparison.Ordinal)
        );
        var unknown = Audit("");
        Assert.Equal(1, unknown.Status);
        Assert.Contains("not-as-published", unknown.Output, StringComparison.Ordinal);
        Assert.Contains(
            "This locked file is not known as the one that the sources make now.",
            unknown.Output,
            StringComparison.Ordinal
        );
        var seen = Audit("we meet at the old weir\n", "--passphrase", "ask");
        Assert.Equal(1, seen.Status);
        Assert.Contains("lock-wrong", seen.Output, StringComparison.Ordinal);
        Assert.Contains("lets https: into default-src", seen.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_locked_page_or_not_a_whole_one_is_said_before_anybody_types()
    {
        sent.Publish("--as", "locked,file", "--client", "tess");
        Assert.Equal("is no locked page.", Said(Path.Combine(sent.To, "tess.html")));
        var text = File.ReadAllText(Locked);
        File.WriteAllText(sent["cut.html"], text[..(text.Length / 2)]);
        Assert.Equal("The file is not whole: its end is missing.", Said(sent["cut.html"]));
        var at = text.LastIndexOf("AES-256-GCM", StringComparison.Ordinal) + 100;
        File.WriteAllText(sent["bit.html"], text[..at] + (char)(text[at] ^ 1) + text[(at + 1)..]);
        Assert.Equal("The file was altered on its way.", Said(sent["bit.html"]));

        string Said(string file)
        {
            var answer = Gradus.RunTyped("", "open", file, "--to", sent["opened.html"]);
            Assert.Equal(2, answer.Status);
            Assert.False(File.Exists(sent["opened.html"]));
            return Regex.Match(answer.Error, @"^gradus: (?:'[^']*' )?(.*?[.])(?: |$)").Groups[1].Value;
        }
    }

    [Fact]
    public void A_passphrase_for_nothing_that_is_locked_is_a_mistake()
    {
        var answer = sent.Publish("--as", "file", "--passphrase", "anew");
        Assert.Equal(2, answer.Status);
        Assert.Equal("gradus: --passphrase goes with --as locked: nothing else has one.\n", answer.Error);
    }

    [Fact]
    public void Beside_the_pages_it_is_made_of_what_was_judged_with_them()
    {
        Assert.Equal(0, sent.Publish("--as", "folder,locked", "--client", "tess").Status);
        var first = File.ReadAllBytes(Locked);
        Assert.Equal(0, sent.Publish("--as", "folder,file,locked", "--client", "tess").Status);
        Assert.Equal(first, File.ReadAllBytes(Locked));
    }

    [Fact]
    public void What_stands_there_and_is_none_is_left_alone()
    {
        Directory.CreateDirectory(sent.To);
        File.WriteAllText(Locked, "my notes on Tess");
        var answer = sent.Publish("--as", "locked", "--client", "tess");
        Assert.Equal(2, answer.Status);
        Assert.Contains("is something other than a locked page. Move it away", answer.Error, StringComparison.Ordinal);
        Assert.Equal("my notes on Tess", File.ReadAllText(Locked));
    }

    [Fact]
    public void The_site_of_somebody_who_left_is_named_by_its_locked_page_too()
    {
        sent.Publish("--as", "locked");
        Assert.Equal([new("bram"), new("tess")], Forms.All.Strangers(sent.To, []));
    }

    private Answer Audit(string typed, params string[] words) =>
        Gradus.RunTyped(
            typed,
            ["audit", sent.Practice, "--site", sent.To, "--client", "tess", "--today", "2026-12-07", .. words]
        );
}
