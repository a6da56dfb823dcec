using System.IO.Compression;
using System.IO.Hashing;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>The zip of a site is the same on every machine and every day.</summary>
public sealed class SameBytesTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Files_given_in_another_order_make_the_same_zip()
    {
        var site = ExampleSite.Edition("first");
        var turned = new Site(site.Client, site.Pages.Reverse(), site.Assets.Reverse());

        Assert.Equal(ZipOf(site, "one"), ZipOf(turned, "other"));
    }

    [Fact]
    public void A_zip_made_in_another_zone_and_language_is_the_same()
    {
        var here = ZipOf(ExampleSite.Long(0), "here");
        foreach (
            var (zone, ahead) in (ReadOnlySpan<(string, string)>)
                [("Pacific/Kiritimati", "14:00:00"), ("Pacific/Pago_Pago", "-11:00:00")]
        )
        {
            var target = folder[ahead];
            using (var elsewhere = new PublishingProcess("zip once", target, ("TZ", zone), ("LC_ALL", "tr_TR.UTF-8")))
            {
                Assert.SkipUnless(
                    elsewhere.Zone == ahead,
                    "The zones of the world are not on this machine: install the Debian package 'tzdata'."
                );
            }
            Assert.Equal(here, File.ReadAllBytes(Path.Combine(target, "rufus.zip")));
        }
    }

    [Fact]
    public void A_zip_says_Unix_whatever_system_it_was_made_on()
    {
        var zip = ZipOf(ExampleSite.Edition("first"), "here");
        var onWindows = (byte[])zip.Clone();
        for (var n = 0; n < 7; n++)
            onWindows[HandMadeZip.ListEntry(onWindows, n) + 5] = 0;
        Assert.NotEqual(zip, onWindows);

        Assert.Equal(zip, SiteZip.SaidToBeMadeOnUnix(onWindows));
    }

    [Fact]
    public void The_date_of_every_entry_is_the_earliest_that_a_zip_can_say()
    {
        ZipOf(ExampleSite.Edition("first"), "here");
        using var zip = ZipFile.OpenRead(folder["here/rufus.zip"]);

        Assert.All(zip.Entries, entry =>
            Assert.Equal(new DateTime(1980, 1, 1, 0, 0, 0, DateTimeKind.Unspecified), entry.LastWriteTime.DateTime)
        );
    }

    /// <summary>The check value that catalogues of checksums give for CRC-32: the sum of the nine digits.</summary>
    [Fact]
    public void The_checksum_is_the_one_of_zips() => Assert.Equal(0xcbf43926, Crc32.HashToUInt32("123456789"u8));

    private byte[] ZipOf(Site site, string name)
    {
        Publication.Write(site, folder[name], new ZipForm());
        return File.ReadAllBytes(folder[name + "/rufus.zip"]);
    }
}
