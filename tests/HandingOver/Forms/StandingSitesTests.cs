using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class StandingSitesTests : IDisposable
{
    private static readonly ClientId Maud = new("maud");
    private readonly TemporaryFolder folder = new();

    private string Target => folder["sites"];

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Sites_of_clients_who_left_are_named_and_stay()
    {
        foreach (var client in (string[])["rufus", "maud", "ivo"])
            Publication.Write(ExampleSite.Edition("first", client), Target);
        foreach (var client in (string[])["rufus", "maud", "agnes"])
            Publication.Write(ExampleSite.Edition("first", client), Target, new ZipForm());

        var strangers = Forms.All.Strangers(Target, [ExampleSite.Rufus]);

        Assert.Equal([new("agnes"), new("ivo"), Maud], strangers);
        Assert.True(File.Exists(Path.Combine(Target, "maud", "index.html")));
        Assert.True(File.Exists(Path.Combine(Target, "agnes.zip")));
        Assert.Empty(Forms.All.Strangers(folder["nowhere"], []));
    }

    [Fact]
    public void What_only_has_the_name_of_a_site_is_nobodys()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        Directory.CreateDirectory(Path.Combine(Target, "posters"));
        Directory.CreateDirectory(Path.Combine(Target, "films.zip"));
        File.WriteAllText(Path.Combine(Target, "readme"), "");
        File.WriteAllText(Path.Combine(Target, "letters.zip"), "not a zip at all, but long enough to hold the end of one");
        File.Copy(Path.Combine(Target, "rufus.zip"), Path.Combine(Target, "maud.zip"));
        File.CreateSymbolicLink(Path.Combine(Target, "ivo.zip"), Path.Combine(Target, "rufus.zip"));

        Assert.Equal([ExampleSite.Rufus], Forms.All.Strangers(Target, []));
    }

    [Fact]
    public void The_places_of_a_client_are_the_folder_and_the_zip_as_far_as_they_stand()
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        Publication.Write(ExampleSite.Edition("first", "maud"), Target, new ZipForm());

        Assert.Equal([Path.Combine(Target, "rufus"), Path.Combine(Target, "rufus.zip")], PlacesOf(ExampleSite.Rufus, Target));
        Assert.Equal([Path.Combine(Target, "maud.zip")], PlacesOf(Maud, Target));
        Assert.Empty(PlacesOf(new("ivo"), Target));
    }

    [Fact]
    public void The_date_of_a_site_is_the_day_it_was_put_there()
    {
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        Publication.Write(ExampleSite.Edition("first", "maud"), Target);
        File.SetLastWriteTime(Path.Combine(Target, "rufus.zip"), new DateTime(2026, 12, 7, 23, 59, 0, DateTimeKind.Local));
        Directory.SetLastWriteTime(Path.Combine(Target, "maud"), new DateTime(2026, 12, 8, 0, 1, 0, DateTimeKind.Local));

        Assert.Equal(new DateOnly(2026, 12, 7), Forms.All.DateOf(ExampleSite.Rufus, Target));
        Assert.Equal(new DateOnly(2026, 12, 8), Forms.All.DateOf(Maud, Target));
        Assert.Null(Forms.All.DateOf(new("ivo"), Target));
    }

    [Theory]
    [InlineData(7, 9, 9)]
    [InlineData(9, 7, 9)]
    public void Where_both_forms_stand_the_later_day_counts(int ofFolder, int ofZip, int day)
    {
        Publication.Write(ExampleSite.Edition("first"), Target);
        Publication.Write(ExampleSite.Edition("first"), Target, new ZipForm());
        Directory.SetLastWriteTime(Path.Combine(Target, "rufus"), new DateTime(2026, 12, ofFolder, 12, 0, 0, DateTimeKind.Local));
        File.SetLastWriteTime(Path.Combine(Target, "rufus.zip"), new DateTime(2026, 12, ofZip, 12, 0, 0, DateTimeKind.Local));

        Assert.Equal(new DateOnly(2026, 12, day), Forms.All.DateOf(ExampleSite.Rufus, Target));
    }

    private static Series<string> PlacesOf(ClientId client, string target) =>
        Forms.All.Standing(client, target).Select(site => site.Place).ToSeries();
}
