using System.IO.Compression;
using System.IO.Hashing;
using System.Text;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>Zips laid out so that one program that unpacks them sees other files than the next, or more than they seem to
/// hold.</summary>
public sealed class ZipLayoutTests : IDisposable
{
    private const string OtherLayout = "is damaged, or was packed anew by another program.";
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_small_zip_that_unpacks_to_much_is_refused()
    {
        var bomb = HandMadeZip.Of(zip =>
            HandMadeZip.Add(zip, "rufus/film", new string('0', 8_000_000), level: CompressionLevel.SmallestSize)
        );

        Assert.InRange(bomb.Length, 0, 20_000);
        Assert.EndsWith(OtherLayout, Refusal(bomb).Sentence, StringComparison.Ordinal);
    }

    /// <summary>What the zip claims is as long as what it takes up, and the checksum is that of the part claimed: only what a
    /// program finds that reads on to the end would give it away, and .NET does not read on.</summary>
    [Fact]
    public void A_compressed_file_that_goes_on_after_its_claimed_end_is_refused()
    {
        var text = new string('a', 1000);
        var zip = HandMadeZip.Of(archive => HandMadeZip.Add(archive, "rufus/film", text, level: CompressionLevel.Optimal));
        var taken = BitConverter.ToInt32(zip, HandMadeZip.ListEntry(zip, 0) + 20);
        Claim(zip, text[..taken]);

        Assert.EndsWith(OtherLayout, Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_takes_up_more_than_it_claims_is_refused()
    {
        var zip = HandMadeZip.Of(archive => HandMadeZip.Add(archive, "rufus/film", "a film of a lunge"));
        Claim(zip, "a film");

        Assert.EndsWith(OtherLayout, Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("its own header says", 0)]
    [InlineData("the list says", 1)]
    public void A_file_called_one_thing_in_the_list_and_another_at_its_place_is_refused(string where, int n)
    {
        var zip = HandMadeZip.With("rufus/log.html");
        var places = AllOf(zip, "rufus/log.html"u8);
        Assert.Equal(2, places.Count);
        "rufus/LOG.html"u8.CopyTo(zip.AsSpan(places[n]));

        Assert.True(Refusal(zip).Sentence.EndsWith(OtherLayout, StringComparison.Ordinal), where);
    }

    [Fact]
    public void A_file_that_stands_between_and_in_no_list_is_refused()
    {
        var zip = HandMadeZip.With("rufus/log.html", "a second of three");
        var (first, last) = (HandMadeZip.ListEntry(zip, 0), HandMadeZip.ListEntry(zip, 1));
        byte[] without = [.. zip[..first], .. zip[first..last], .. zip[^ZipEnd.Length..]];
        without[^14] = without[^12] = 1;
        BitConverter.TryWriteBytes(without.AsSpan(without.Length - 10), last - first);

        Assert.EndsWith(OtherLayout, Refusal(without).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_that_lie_over_one_another_are_refused()
    {
        var zip = HandMadeZip.Of(archive =>
        {
            HandMadeZip.Add(archive, "rufus/a", new string('a', 10_000));
            HandMadeZip.Add(archive, "rufus/b", "");
        });
        var (one, other) = (HandMadeZip.ListEntry(zip, 0), HandMadeZip.ListEntry(zip, 1));
        zip.AsSpan(one + 16, 12).CopyTo(zip.AsSpan(other + 16));
        zip.AsSpan(one + 42, 4).CopyTo(zip.AsSpan(other + 42));

        Assert.EndsWith(OtherLayout, Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_leads_to_another_file_of_the_same_bytes_is_refused()
    {
        var zip = HandMadeZip.Of(archive =>
        {
            HandMadeZip.Add(archive, "rufus/a", "mine");
            HandMadeZip.Add(archive, "rufus/b", "mine");
        });
        zip.AsSpan(HandMadeZip.ListEntry(zip, 0) + 42, 4).CopyTo(zip.AsSpan(HandMadeZip.ListEntry(zip, 1) + 42));

        Assert.EndsWith(OtherLayout, Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    /// <summary>Makes the list and the file's own header say that the one file in a zip is this text.</summary>
    private static void Claim(byte[] zip, string text)
    {
        foreach (var checksum in (int[])[14, HandMadeZip.ListEntry(zip, 0) + 16])
        {
            BitConverter.TryWriteBytes(zip.AsSpan(checksum), Crc32.HashToUInt32(Encoding.UTF8.GetBytes(text)));
            BitConverter.TryWriteBytes(zip.AsSpan(checksum + 8), text.Length);
        }
    }

    private static List<int> AllOf(byte[] zip, ReadOnlySpan<byte> name)
    {
        var places = new List<int>();
        for (var at = 0; at < zip.Length - name.Length; at++)
        {
            if (zip.AsSpan(at).StartsWith(name))
                places.Add(at);
        }
        return places;
    }

    private HandOverException Refusal(byte[] zip)
    {
        File.WriteAllBytes(folder["z.zip"], zip);
        return Assert.Throws<HandOverException>(() => new ZipForm().Read(folder["z.zip"], ExampleSite.Rufus));
    }
}
