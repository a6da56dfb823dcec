using Gradus.Domain;
using Gradus.Media;

namespace Gradus.Tests.Reading;

[Trait("Slow", "yes")]
public sealed class PictureTests
{
    /// <summary>37 by 21 pixels, red, written by an independent program.</summary>
    private static readonly Dictionary<string, string> Pictures = new(StringComparer.Ordinal)
    {
        ["heel.png"] =
            "iVBORw0KGgoAAAANSUhEUgAAACUAAAAVAQMAAAD7KrXtAAAABGdBTUEAALGPC/xhBQAAACBjSFJNAAB6JgAAgIQAAPoAAACA6AAAdTAAAOpgAAA6"
            + "mAAAF3CculE8AAAABlBMVEX/AAD///9BHTQRAAAAAWJLR0QB/wIt3gAAAAd0SU1FB+oLGQwZDyNv9q0AAAAMSURBVAjXY2AYSAAAAH4AAf21N1IA"
            + "AAAldEVYdGRhdGU6Y3JlYXRlADIwMjYtMTEtMjVUMTI6MjU6MTUrMDA6MDC/CcM8AAAAJXRFWHRkYXRlOm1vZGlmeQAyMDI2LTExLTI1VDEyOjI1"
            + "OjE1KzAwOjAwzlR7gAAAAABJRU5ErkJggg==",
        ["heel.jpg"] =
            "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBk"
            + "eFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAVACUD"
            + "ASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAX/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFgEBAQEAAAAAAAAAAAAAAAAAAAUG/8QAFBEB"
            + "AAAAAAAAAAAAAAAAAAAAAP/aAAwDAQACEQMRAD8AigJbeAAAAAAAAAAP/9k=",
        ["heel.webp"] =
            "UklGRk4AAABXRUJQVlA4IEIAAABQAwCdASolABUAPpFGnkslo6KhpWgAsBIJZwDO3oAAK/fDcAD+7qY//2LOWwLx//7nA/7nA/7nA/jbB+29aoAA"
            + "AAA=",
        ["exact.webp"] = "UklGRhwAAABXRUJQVlA4TA8AAAAvJAAFAAcQ/Y/+ByKi/wEA",
    };

    /// <summary>The first of them.</summary>
    public static byte[] Png => Convert.FromBase64String(Pictures["heel.png"]);

    public static byte[] Jpeg => Convert.FromBase64String(Pictures["heel.jpg"]);

    public static TheoryData<string> Names => [.. Pictures.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_picture_is_read_with_its_size(string name)
    {
        var picture = Assert.Single(With(name, Convert.FromBase64String(Pictures[name])).Read().Pictures);
        Assert.Equal(("exercises/" + name, 37, 21), (picture.Path, picture.Width, picture.Height));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_picture_cut_off_anywhere_is_refused_or_read_and_never_throws(string name)
    {
        var bytes = Convert.FromBase64String(Pictures[name]);
        var refused = Enumerable
            .Range(0, bytes.Length)
            .Count(length => With(name, bytes[..length]).Findings().Any(f => f.Rule.Text == "picture-missing"));
        Assert.InRange(refused, 12, bytes.Length);
    }

    [Fact]
    public void A_plan_shows_the_picture_and_hands_it_over()
    {
        var practice = With("heel.png", Convert.FromBase64String(Pictures["heel.png"])).Read();
        var plan = Planned.For(practice, practice.Clients[0]);
        Assert.Equal("pictures/exercises/heel.png", Assert.Single(plan.Pictures).Path);
        var shown = plan
            .Exercises.SelectMany(e => e.Text.Instructions)
            .SelectMany(p => p.Inlines())
            .OfType<Inline.Picture>()
            .First();
        Assert.Equal(("pictures/exercises/heel.png", "The heel is down"), (shown.Path, shown.Shows));
    }

    [Fact]
    public void Pictures_whose_paths_differ_in_a_hyphen_alone_are_both_shown()
    {
        var (one, other) = (Convert.FromBase64String(Pictures["heel.png"]), Convert.FromBase64String(Pictures["heel.jpg"]));
        var practice = With("calf/heel.png", one)
            .With("exercises/calf-heel.png", other)
            .Edit(File, "(calf/heel.png)", "(calf/heel.png) ![The heel is up](calf-heel.png)")
            .Read();
        var plan = Planned.For(practice, practice.Clients[0]);
        Assert.Equal(
            [
                ("pictures/exercises/calf-heel.png", other),
                ("pictures/exercises/calf/heel.png", MediaFile.Of(one)?.Bytes.ToArray() ?? []),
            ],
            plan.Pictures.Select(p => (p.Path, p.Bytes.ToArray()))
        );
        var shown = plan.Exercises.SelectMany(e => e.Text.Instructions).SelectMany(p => p.Inlines()).OfType<Inline.Picture>();
        Assert.Equal(
            [("pictures/exercises/calf/heel.png", "The heel is down"), ("pictures/exercises/calf-heel.png", "The heel is up")],
            shown.Select(p => (p.Path, p.Shows))
        );
    }

    [Fact]
    public void Pictures_whose_paths_differ_in_capitals_alone_are_refused()
    {
        var bytes = Convert.FromBase64String(Pictures["heel.png"]);
        var practice = With("heel.png", bytes)
            .With("exercises/Heel.png", bytes)
            .Edit(File, "(heel.png)", "(heel.png) ![The heel is up](Heel.png) ![Again](Heel.png)");
        var finding = Assert.Single(practice.Findings());
        Assert.Equal(
            (
                "picture-missing",
                "'exercises/Heel.png' and 'exercises/heel.png' differ in capital letters alone, so some phones would "
                    + "show one for both."
            ),
            (finding.Rule.Text, finding.Message)
        );
    }

    [Fact]
    public void A_picture_in_another_clients_folder_is_refused()
    {
        var practice = With("heel.png", Convert.FromBase64String(Pictures["heel.png"]))
            .With("clients/ansel/heel.png", Convert.FromBase64String(Pictures["heel.png"]));
        var edited = practice.Edit(File, "(heel.png)", "(../clients/ansel/heel.png)");
        Assert.Equal("address-refused", Assert.Single(edited.Findings()).Rule.Text);
    }

    private const string File = "exercises/heel-sink.md";

    private static LittlePractice With(string name, byte[] bytes) =>
        LittlePractice
            .Golden.Edit(File, "Let the heel sink.", $"Let the heel sink. ![The heel is down]({name})")
            .With("exercises/" + name, bytes);
}
