using System.Globalization;
using System.IO.Compression;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

[Trait("Slow", "yes")]
public sealed class PublishedZipTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string Zip => folder["sites/rufus.zip"];

    public PublishedZipTests() => Publication.Write(ExampleSite.Edition("first"), folder["sites"], new ZipForm());

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_was_published_is_read_back_byte_for_byte()
    {
        var site = new ZipForm().Read(Zip, ExampleSite.Rufus);

        Assert.Equal(ExampleSite.Rufus, site.Client);
        Assert.Equal(ExampleSite.Edition("first").Pages, site.Pages);
        Assert.Equal(ExampleSite.Edition("first").Files(), site.Files());
    }

    [Fact]
    public void A_zip_and_a_folder_of_one_site_read_the_same()
    {
        Publication.Write(ExampleSite.Edition("first"), folder["sites"]);

        Assert.Equal(
            new FolderForm().Read(folder["sites/rufus"], ExampleSite.Rufus).Files(),
            new ZipForm().Read(Zip, ExampleSite.Rufus).Files()
        );
    }

    /// <summary>Programs that unpack do not agree on how far they read on in what is compressed, nor where two places say two
    /// things.</summary>
    [Fact]
    public void A_zip_that_somebody_squeezed_is_refused()
    {
        HandMadeZip.PackAnew(Zip, CompressionLevel.SmallestSize);

        Assert.Equal($"'{Zip}' is damaged, or was packed anew by another program. Publish the site again.", Refusal().Message);
    }

    [Fact]
    public void A_page_that_somebody_changed_is_read_for_the_auditor_to_judge()
    {
        File.WriteAllBytes(Zip, HandMadeZip.With("rufus/LOUD.HTML", "<p>"));

        Assert.Contains(new Page("LOUD.HTML", "<p>"), new ZipForm().Read(Zip, ExampleSite.Rufus).Pages);
    }

    [Fact]
    public void A_page_that_is_no_text_is_refused()
    {
        File.WriteAllBytes(
            Zip,
            HandMadeZip.Of(zip =>
            {
                var entry = zip.CreateEntry("rufus/log.html", CompressionLevel.NoCompression);
                entry.ExternalAttributes = HandMadeZip.PlainFile << 16;
                using var content = entry.Open();
                content.Write([0xc3, 0x28]);
            })
        );

        Assert.Equal($"'{Zip}/log.html' is not UTF-8 text.", Refusal().Sentence);
    }

    [Fact]
    public void A_zip_that_is_not_there_or_is_none_is_said_to_be()
    {
        File.CreateSymbolicLink(folder["sites/maud.zip"], Zip);
        Directory.CreateDirectory(folder["sites/ivo.zip"]);

        Assert.Equal($"There is no published site in '{folder["nowhere.zip"]}'.", Refusal(folder["nowhere.zip"]).Sentence);
        Assert.Equal(
            $"'{folder["sites/maud.zip"]}' is a link and may lead out of the site.",
            Refusal(folder["sites/maud.zip"]).Sentence
        );
        Assert.Equal($"'{folder["sites/ivo.zip"]}' is a folder, not a zip.", Refusal(folder["sites/ivo.zip"]).Sentence);
    }

    [Fact]
    public void A_pipe_is_not_waited_for()
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && TemporaryFolder.Run("mkfifo", folder["pipe.zip"]).Exit == 0,
            "No pipe can be made here."
        );

        Assert.Contains("is no zip", Refusal(folder["pipe.zip"]).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_files_are_read_and_one_more_is_not()
    {
        static byte[] Holding(int files) =>
            HandMadeZip.Of(zip =>
            {
                for (var n = 0; n < files; n++)
                    HandMadeZip.Add(zip, "rufus/" + n.ToString(CultureInfo.InvariantCulture), "");
            });
        File.WriteAllBytes(Zip, Holding(10_000));
        Assert.Equal(10_000, new ZipForm().Read(Zip, ExampleSite.Rufus).Assets.Count);

        File.WriteAllBytes(Zip, Holding(10_001));

        Assert.Equal($"'{Zip}' holds more than 10000 files.", Refusal().Sentence);
    }

    [Fact]
    public void A_page_of_four_mebibytes_is_read_and_one_byte_more_is_not()
    {
        File.WriteAllBytes(Zip, HandMadeZip.With("rufus/log.html", new string('a', PublishedSite.LargestPage)));
        Assert.Contains(new ZipForm().Read(Zip, ExampleSite.Rufus).Pages, page => page.Html.Length == 4_194_304);

        File.WriteAllBytes(Zip, HandMadeZip.With("rufus/log.html", new string('a', PublishedSite.LargestPage + 1)));

        Assert.Equal($"'{Zip}' holds 'rufus/log.html', which is larger than 4 MiB.", Refusal().Sentence);
    }

    [Fact]
    public void Every_zip_cut_short_or_made_longer_is_refused()
    {
        var whole = File.ReadAllBytes(Zip);
        for (var length = 0; length < whole.Length; length++)
        {
            File.WriteAllBytes(Zip, whole[..length]);
            Assert.Contains("is no zip, or no plain whole one", Refusal().Sentence, StringComparison.Ordinal);
        }
        File.WriteAllBytes(Zip, [.. whole, 0]);
        Assert.Contains("is no zip", Refusal().Sentence, StringComparison.Ordinal);
        File.WriteAllBytes(Zip, [0, .. whole]);
        Assert.Contains("is no zip", Refusal().Sentence, StringComparison.Ordinal);
    }

    /// <summary>Only what no program that unpacks takes for content may differ: on which system an entry was made, and who may
    /// read it.</summary>
    [Fact]
    public void A_zip_with_any_one_byte_changed_gives_the_same_site_or_is_refused()
    {
        var whole = File.ReadAllBytes(Zip);
        var refused = 0;
        for (var at = 0; at < whole.Length; at++)
        {
            foreach (var change in (byte[])[0x01, 0x80, 0xff])
            {
                var changed = (byte[])whole.Clone();
                changed[at] ^= change;
                File.WriteAllBytes(Zip, changed);
                if (TryRead() is not { } site)
                    refused++;
                else
                    Assert.Equal(ExampleSite.Edition("first").Files(), site.Files());
            }
        }
        Assert.InRange(refused, whole.Length * 3 * 9 / 10, whole.Length * 3 - 1);
    }

    private Site? TryRead()
    {
        try
        {
            return new ZipForm().Read(Zip, ExampleSite.Rufus);
        }
        catch (HandOverException)
        {
            return null;
        }
    }

    private HandOverException Refusal() => Refusal(Zip);

    private static HandOverException Refusal(string zip) =>
        Assert.Throws<HandOverException>(() => new ZipForm().Read(zip, ExampleSite.Rufus));
}
