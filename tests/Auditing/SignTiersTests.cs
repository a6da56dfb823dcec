using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>content/signs.md: every sign to stop for says how urgent it is, and no exercise is without the signs that its work
/// can bring.</summary>
public sealed class SignTiersTests
{
    private static readonly string[] Tiers =
    [
        "call {emergency} now",
        "Call {emergency} now",
        "see a doctor today",
        "See a doctor today",
    ];

    private static readonly string[] Coach = ["ell Ottoline", "ell your coach"];

    private static readonly string[] Folders = ["content", "src/CommandLine/Starter/practice"];

    public static TheoryData<string> Practices => new(Folders);

    [Theory]
    [MemberData(nameof(Practices))]
    public void Every_stop_sign_says_its_tier(string folder)
    {
        var stops = Cautions(folder).Where(c => c.Text.Contains("\nkind: stop\n", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(stops);
        Assert.All(stops, c => Assert.Contains(Tiers, t => c.Text.Contains(t, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("neck, jaw or an arm", true)]
    [InlineData("cannot speak clearly", true)]
    [InlineData("see as usual", true)]
    [InlineData("headache is worse than any before", true)]
    [InlineData("numb between the legs", true)]
    [InlineData("lose control of your bladder or bowels", true)]
    [InlineData("with chest pain or short breath", true)]
    [InlineData("a feeling of being kicked in the calf", false)]
    [InlineData("A calf that is hot, swollen or sore", false)]
    public void A_sign_of_an_emergency_leads_to_the_number(string sign, bool ambulance) => Assert.All(Folders, folder =>
        {
            var caution = Assert.Single(Cautions(folder), c => c.Text.Contains(sign, StringComparison.Ordinal));
            Assert.Contains("\nkind: stop\n", caution.Text, StringComparison.Ordinal);
            Assert.Contains(ambulance ? "all {emergency} now" : "ee a doctor today", caution.Text, StringComparison.Ordinal);
        });

    /// <summary>Overbreathing makes dizziness worse; nobody unwell trains at half; who is not to try
    /// is given no test.</summary>
    [Theory]
    [InlineData("more often")]
    [InlineData("unwell, stop at half")]
    [InlineData("rise on your toes")]
    [InlineData("get help now")]
    [InlineData("the emergency number")]
    [InlineData("write to me")]
    [InlineData("tell me")]
    public void What_was_wrong_is_in_no_sign_any_more(string words) =>
        Assert.All(Folders, folder =>
            Assert.DoesNotContain(Cautions(folder), c => c.Text.Contains(words, StringComparison.Ordinal))
        );

    [Fact]
    public void What_is_not_an_emergency_goes_to_the_coach_too() =>
        Assert.All(Folders, folder =>
            Assert.All(
                Cautions(folder)
                    .Where(c => c.Id is "sharp-pain" or "giving-way" or "joint-slips" or "tingling" or "numb-or-weak"),
                c => Assert.Contains(Coach, t => c.Text.Contains(t, StringComparison.Ordinal))
            )
        );

    [Theory]
    [MemberData(nameof(Practices))]
    public void Every_exercise_has_sharp_pain_and_hard_calf_work_the_snap(string folder)
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path(folder)), []).Practice!;
        Assert.All(practice.Exercises, e => Assert.Contains(e.Signs, s => s.Value.Text == "sharp-pain"));
        var snap = practice.Find(new CautionId("snap-or-swelling-in-calf"))!;
        Assert.Equal("ankle", snap.AttachesTo?.Loads?.Name);
        var calf = practice
            .Exercises.Where(e => e.Trains.Region?.Name == "ankle" && e.Stage is (Stage.Strengthen or Stage.Load))
            .ToArray();
        Assert.NotEmpty(calf);
        Assert.All(calf, e => Assert.Contains(e.Loads, l => l.Region.Name == "ankle"));
    }

    private static (string Id, string Text)[] Cautions(string folder) =>
        [
            .. Directory
                .GetFiles(Repository.Path([.. folder.Split('/'), "cautions"]), "*.md")
                .Select(f => (Path.GetFileNameWithoutExtension(f), File.ReadAllText(f))),
        ];
}
