using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>Zips made to reach out of the client's folder, to hide from the auditor, or to fill the memory.</summary>
public sealed class HostileZipTests : IDisposable
{
    private const int Link = 0xa1ff,
        Device = 0x61b6,
        Folder = 0x41ed;
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
        Assert.EndsWith(
            "holds 'rufus/?[31m?log.html', which is no safe path.",
            Refusal(HandMadeZip.With("rufus/\u001b[31m\nlog.html")).Sentence,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "aaa…', which is no safe path.",
            Refusal(HandMadeZip.With("../" + new string('a', 60_000))).Sentence,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("maud/index.html")]
    [InlineData("rufus")]
    [InlineData("Rufus/log.html")]
    [InlineData("rufus2/log.html")]
    public void What_lies_outside_the_clients_folder_is_refused(string name) =>
        Assert.EndsWith(
            $"holds '{name}' outside the folder 'rufus'.",
            Refusal(HandMadeZip.With(name)).Sentence,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("rufus/index.html")]
    [InlineData("rufus/Index.HTML")]
    public void The_same_name_twice_is_refused(string name) =>
        Assert.EndsWith($"holds '{name}' twice.", Refusal(HandMadeZip.With(name)).Sentence, StringComparison.Ordinal);

    [Fact]
    public void A_file_inside_another_file_is_refused() =>
        Assert.EndsWith(
            "holds 'rufus/INDEX.html/log.html' inside another file.",
            Refusal(HandMadeZip.With("rufus/INDEX.html/log.html")).Sentence,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(Link)]
    [InlineData(Device)]
    [InlineData(Folder)]
    [InlineData(0)]
    public void A_link_or_a_device_is_refused(int mode) =>
        Assert.EndsWith(
            "holds 'rufus/log.html', which is a link or no plain file.",
            Refusal(HandMadeZip.With("rufus/log.html", "/etc", mode)).Sentence,
            StringComparison.Ordinal
        );

    [Fact]
    public void An_entry_that_needs_a_password_is_refused()
    {
        var zip = HandMadeZip.With("rufus/log.html");
        zip[HandMadeZip.ListEntry(zip, 1) + 8] |= 1;

        Assert.EndsWith("has locked 'rufus/log.html' with a password.", Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_claims_to_be_larger_than_a_gibibyte_is_refused()
    {
        var zip = HandMadeZip.With("rufus/film");
        BitConverter.TryWriteBytes(zip.AsSpan(HandMadeZip.ListEntry(zip, 1) + 24), PublishedSite.LargestSite + 1);

        Assert.EndsWith("unpacks to more than 1024 MiB.", Refusal(zip).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_is_longer_than_ten_thousand_files_need_is_not_taken_in()
    {
        var remark = new string('r', 60_000);
        var zip = HandMadeZip.Of(archive =>
        {
            for (var n = 0; n < 180; n++)
                archive.CreateEntry($"rufus/{n}").Comment = remark;
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

    private HandOverException Refusal(byte[] zip)
    {
        File.WriteAllBytes(folder["z.zip"], zip);
        return Assert.Throws<HandOverException>(() => new ZipForm().Read(folder["z.zip"], ExampleSite.Rufus));
    }
}
