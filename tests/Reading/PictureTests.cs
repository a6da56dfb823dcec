using Gradus.Domain;

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
        var size = Assert.Single(picture.Sizes);
        Assert.Equal(("exercises/" + name, 37, 21), (picture.Path, size.Width, size.Height));
        Assert.Matches("^pictures/[0-9a-f]{12}-37\\.webp$", size.WebP.Path);
        Assert.Equal(Path.ChangeExtension(size.WebP.Path, ".jpg"), size.Jpeg?.Path);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_picture_cut_off_anywhere_is_refused_or_read_and_never_throws(string name)
    {
        var bytes = Convert.FromBase64String(Pictures[name]);
        var refused = Enumerable
            .Range(0, bytes.Length)
            .Count(length => With(name, bytes[..length]).Findings().Any(f => f.Rule.Text == "picture-missing"));
        Assert.InRange(refused, bytes.Length / 2, bytes.Length);
    }

    [Fact]
    public void A_plan_shows_the_picture_and_hands_it_over()
    {
        var practice = With("heel.png", Png).Read();
        var plan = Planned.For(practice, practice.Clients[0]);
        var picture = Assert.Single(plan.Pictures);
        var shown = ShownIn(plan).First();
        Assert.Equal(("exercises/heel.png", "The heel is down"), (shown.Path, shown.Shows));
        Assert.Equal(picture.Sizes, shown.Sizes);
    }

    /// <summary>Of one name but the folder, of one but a hyphen, of one but the ending, of one but a capital letter.</summary>
    [Theory]
    [InlineData("calf/heel.png", "calf-heel.png")]
    [InlineData("heel.png", "heel.jpg")]
    [InlineData("heel.png", "Heel.png")]
    [InlineData("heel down.png", "heel%20down.png")]
    public void Two_pictures_of_nearly_one_name_are_both_shown(string one, string other)
    {
        var practice = With(one, Png)
            .With("exercises/" + other, Jpeg)
            .Edit(File, $"({one})", $"({one}) ![The heel is up]({other})")
            .Read();
        var plan = Planned.For(practice, practice.Clients[0]);
        Assert.Equal(
            new[] { ("exercises/" + one, "The heel is down"), ("exercises/" + other, "The heel is up") },
            ShownIn(plan).Take(2).Select(p => (p.Path, p.Shows))
        );
        var files = plan.Pictures.SelectMany(p => p.Files).ToArray();
        Assert.Equal((4, 4), (files.Length, files.Select(f => f.Path).Distinct().Count()));
    }

    /// <summary>Scaled once, and handed over once.</summary>
    [Fact]
    public void Two_files_of_one_content_are_one_picture_of_the_site()
    {
        var practice = With("heel.png", Png)
            .With("exercises/again.png", Png)
            .Edit(File, "(heel.png)", "(heel.png) ![Again](again.png)")
            .Read();
        Assert.Equal(2, practice.Pictures.Count);
        Assert.Equal(practice.Pictures[0].Sizes[0].WebP.Path, practice.Pictures[1].Sizes[0].WebP.Path);
    }

    /// <summary>As a phone, a download and a coach name them, and as CommonMark wants them written.</summary>
    [Theory]
    [InlineData("heel down.png", "heel down.png")]
    [InlineData("heel down.png", "<heel down.png>")]
    [InlineData("heel down.png", "heel%20down.png")]
    [InlineData("Ferse (2) unten, später.PNG", "Ferse (2) unten, später.PNG")]
    [InlineData("脚后跟.png", "脚后跟.png")]
    [InlineData("50% gebeugt.png", "50% gebeugt.png")]
    [InlineData("a#b?c&d.png", "a#b?c&d.png")]
    public void A_name_may_have_blanks_and_letters_of_any_language(string name, string written)
    {
        var practice = LittlePractice
            .Golden.Edit(File, "Let the heel sink.", $"Let the heel sink. ![The heel is down]({written}) `![x](y z.png)` Wait.")
            .With("exercises/" + name, Png)
            .Read();
        Assert.Equal("exercises/" + name, Assert.Single(practice.Pictures).Path);
        var plan = Planned.For(practice, practice.Clients[0]);
        var file = Assert.Single(plan.Pictures).Sizes[0].WebP.Path;
        Assert.True(file.All(char.IsAscii));
        Assert.Contains(plan.Exercises.SelectMany(e => e.Text.Do.Lines()), l =>
            l.Contains("![x](y z.png) Wait.", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_name_with_blanks_that_there_is_not_is_said_as_it_is_written()
    {
        var finding = Assert.Single(With("heel down.png", Png).Edit(File, "(heel down.png)", "(heel downn.png)").Findings());
        Assert.Equal(
            ("picture-missing", "There is no picture 'exercises/heel downn.png'."),
            (finding.Rule.Text, finding.Message)
        );
        Assert.Contains("heel down.png", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_in_another_clients_folder_is_refused()
    {
        var practice = With("heel.png", Png).With("clients/ansel/heel.png", Png);
        var edited = practice.Edit(File, "(heel.png)", "(../clients/ansel/heel.png)");
        Assert.Equal("address-refused", Assert.Single(edited.Findings()).Rule.Text);
    }

    [Fact]
    public void What_is_wrong_with_a_picture_is_said_wherever_a_text_shows_it()
    {
        var practice = With("heel.png", Png[..200]).Edit(File, "(heel.png)", "(heel.png) ![Again](heel.png)");
        Assert.Equal(2, practice.Findings().Count(f => f.Rule.Text == "picture-missing"));
    }

    [Fact]
    public void Of_a_picture_that_is_too_large_stand_its_words()
    {
        var large = Png;
        System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(large.AsSpan(16), 60001);
        System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(large.AsSpan(20), 1000);
        var findings = new Findings();
        var practice = Gradus.Reading.PracticeReader.Read(With("heel.png", large).Folder, findings).Practice;
        Assert.NotNull(practice);
        Assert.Equal(("picture-too-large", Level.Warning), findings.Select(f => (f.Rule.Text, f.Level)).Single());
        var plan = Planned.For(practice, practice.Clients[0]);
        Assert.Empty(plan.Pictures);
        Assert.Contains(plan.Exercises.SelectMany(e => e.Text.Do.Lines()), l =>
            l.EndsWith("Let the heel sink. The heel is down", StringComparison.Ordinal)
        );
    }

    private const string File = "exercises/heel-sink.md";

    private static IEnumerable<Inline.Picture> ShownIn(Gradus.Planning.Plan plan) =>
        plan.Exercises.SelectMany(e => e.Text.Instructions).SelectMany(p => p.Inlines()).OfType<Inline.Picture>();

    private static LittlePractice With(string name, byte[] bytes) =>
        LittlePractice
            .Golden.Edit(File, "Let the heel sink.", $"Let the heel sink. ![The heel is down]({name})")
            .With("exercises/" + name, bytes);
}
