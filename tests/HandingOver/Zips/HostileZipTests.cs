using System.IO.Compression;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>Zips made to reach out of the client's folder, to hide from the auditor, or to fill the memory.</summary>
public sealed class HostileZipTests : IDisposable
{
    private const int Link = 0xa1ff, Device = 0x61b6, Folder = 0x41ed;
    private const string OtherLayout = "is damaged, or was packed anew by another program.";
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("../index.html")]
    [InlineData("rufus/../../index.html")]
    [InlineData("rufus/..")]
    [InlineData("/etc/passwd")]
    [InlineData("C:/index.html")]
    [InlineData("rufus\\log.html")]
    [InlineData("..\\log.html")]
    [InlineData("rufus//log.html")]
    [InlineData("rufus/./log.html")]
    [InlineData("rufus/.hidden")]
    [InlineData("rufus/log.html ")]
    [InlineData("/")]
    [InlineData("rufus//")]
    [InlineData("rufus/")]
    [InlineData("__MACOSX/")]
    public void A_name_that_is_no_safe_path_is_refused(string name)
    {
        Assert.Equal($"'{folder["z.zip"]}' holds '{name}', which is no safe path.", Refusal(HandMadeZip.With(name)).Sentence);
        Assert.Equal(["z.zip"], Directory.EnumerateFileSystemEntries(folder.Root).Select(path => Path.GetFileName(path)));
    }

    [Fact]
    public void A_name_that_would_steer_or_fill_a_terminal_is_not_printed_as_it_is()
    {
        Assert.EndsWith("holds 'rufus/?[31m?log.html', which is no safe path.", Refusal(HandMadeZip.With("rufus/\u001b[31m\nlog.html")).Sentence, StringComparison.Ordinal);
        Assert.EndsWith("aaa…', which is no safe path.", Refusal(HandMadeZip.With("../" + new string('a', 60_000))).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("maud/index.html")]
    [InlineData("rufus")]
    [InlineData("Rufus/log.html")]
    [InlineData("rufus2/log.html")]
    public void What_lies_outside_the_clients_folder_is_refused(string name) =>
        Assert.EndsWith($"holds '{name}' outside the folder 'rufus'.", Refusal(HandMadeZip.With(name)).Sentence, StringComparison.Ordinal);

    [Theory]
    [InlineData("rufus/index.html")]
    [InlineData("rufus/Index.HTML")]
    public void The_same_name_twice_is_refused(string name) =>
        Assert.EndsWith($"holds '{name}' twice.", Refusal(HandMadeZip.With(name)).Sentence, StringComparison.Ordinal);

    [Fact]
    public void A_file_inside_another_file_is_refused() =>
        Assert.EndsWith("holds 'rufus/INDEX.html/log.html' inside another file.", Refusal(HandMadeZip.With("rufus/INDEX.html/log.html")).Sentence, StringComparison.Ordinal);

    [Theory]
    [InlineData(Link)]
    [InlineData(Device)]
    [InlineData(Folder)]
    [InlineData(0)]
    public void A_link_or_a_device_is_refused(int mode) =>
        Assert.EndsWith("holds 'rufus/log.html', which is a link or no plain file.", Refusal(HandMadeZip.With("rufus/log.html", "/etc", mode)).Sentence, StringComparison.Ordinal);

    [Fact]
    public void An_entry_that_needs_a_password_is_refused()
    {
        var zip = HandMadeZip.With("rufus/log.html");
        zip[HandMadeZip.ListEntry(zip, 1) + 8] |= 1;

        Assert.EndsWith("has locked 'rufus/log.html' with a password.", Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_zip_that_unpacks_to_much_is_refused()
    {
        var bomb = HandMadeZip.Of(zip => HandMadeZip.Add(zip, "rufus/film", new string('0', 8_000_000), level: CompressionLevel.SmallestSize));

        Assert.InRange(bomb.Length, 0, 20_000);
        Assert.EndsWith(OtherLayout, Refusal(bomb).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_claims_to_be_larger_than_a_gibibyte_is_refused()
    {
        var zip = HandMadeZip.With("rufus/film");
        BitConverter.TryWriteBytes(zip.AsSpan(HandMadeZip.ListEntry(zip, 1) + 24), PublishedSite.LargestSite + 1);

        Assert.EndsWith("unpacks to more than 1024 MiB.", Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    /// <summary>The checksum is that of the part which the list claims, so only the bytes that follow would give it away.</summary>
    [Theory]
    [InlineData(CompressionLevel.SmallestSize)]
    [InlineData(CompressionLevel.NoCompression)]
    public void A_file_that_goes_on_after_its_claimed_end_is_refused(CompressionLevel level)
    {
        var zip = HandMadeZip.Of(archive => HandMadeZip.Add(archive, "rufus/film", "a film of a lunge", level: level));
        foreach (var checksum in (int[])[14, HandMadeZip.ListEntry(zip, 0) + 16])
        {
            BitConverter.TryWriteBytes(zip.AsSpan(checksum), CheckSum.Of("a film"u8));
            BitConverter.TryWriteBytes(zip.AsSpan(checksum + 8), "a film".Length);
        }

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
    public void A_list_that_is_longer_than_ten_thousand_files_need_is_not_taken_in()
    {
        var remark = new string('r', 60_000);
        var zip = HandMadeZip.Of(archive =>
        {
            for (var n = 0; n < 180; n++) archive.CreateEntry($"rufus/{n}").Comment = remark;
        });

        Assert.EndsWith("holds more than 10000 files.", Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Noise_is_refused()
    {
        var chance = new Reading.Chance(17);
        for (var round = 0; round < 300; round++)
        {
            var noise = Enumerable.Range(0, chance.Below(2000)).Select(_ => (byte)chance.Below(256)).ToArray();
            // Every other time with the end of a zip that fits, so that the noise is taken for a list.
            byte[] end = [0x50, 0x4b, 5, 6, 0, 0, 0, 0, 1, 0, 1, 0, .. BitConverter.GetBytes(noise.Length), 0, 0, 0, 0, 0, 0];
            Refusal(round % 2 == 0 ? noise : [.. noise, .. end]);
        }
    }

    private static List<int> AllOf(byte[] zip, ReadOnlySpan<byte> name)
    {
        var places = new List<int>();
        for (var at = 0; at < zip.Length - name.Length; at++)
        {
            if (zip.AsSpan(at).StartsWith(name)) places.Add(at);
        }
        return places;
    }

    private HandOverException Refusal(byte[] zip)
    {
        File.WriteAllBytes(folder["z.zip"], zip);
        return Assert.Throws<HandOverException>(() => PublishedSite.ReadZip(folder["z.zip"], ExampleSite.Rufus));
    }
}
