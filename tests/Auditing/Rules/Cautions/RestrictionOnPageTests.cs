using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a clinician asked to be spared stands on every page that tells the client to move, whole, before the first
/// instruction.</summary>
public sealed class RestrictionOnPageTests
{
    private const string Session = "session-1.html";
    private const string Exercise = "exercise-calf-press.html";
    private const string Before = "before-you-start.html";
    private const string Title = "<h3>To spare: right wrist</h3>\n";
    private const string Asked = "<p>Asked for by her physiotherapist on 23 November 2026, until 31 March 2027.</p>\n";
    private const string Kept = "<p>Your exercises leave it out.</p>\n";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a restriction missing on before-you-start", Before, Title + Asked + Kept, "", "page-without-cautions"),
        Plant("a restriction missing on a session's page", Session, Title + Asked + Kept, "", "page-without-cautions"),
        Plant("a restriction missing on an exercise's page", Exercise, Title + Asked + Kept, "", "page-without-cautions"),
        Plant("its title taken away", Session, Title, "", "page-without-cautions"),
        Plant("who asked for it taken away", Session, Asked, "", "caution-altered"),
        Plant("what it means taken away", Session, Kept, "", "caution-altered"),
        Plant("the other side", Session, "To spare: right wrist", "To spare: left wrist", "page-without-cautions"),
        Plant("another place", Exercise, "To spare: right wrist", "To spare: right knee", "page-without-cautions"),
        Plant("an earlier end", Session, "until 31 March 2027", "until 31 March 2026", "caution-altered"),
        Plant("somebody else asked", Session, "Asked for by her physiotherapist", "Asked for by her coach", "caution-altered"),
        Plant("it became a limit", Session, "leave it out", "keep to this: hold for up to 20 seconds", "caution-altered"),
        Plant("hidden", Session, "<p>Your exercises leave it out.", "<p hidden>Your exercises leave it out.", "caution-hidden"),
        .. new[] { Session, Exercise }.Select(page =>
            Plant($"behind an instruction on {page}", page, Title, "<p>Let go slowly.</p>" + Title, "caution-after-instruction")
        ),
    ];

    public static TheoryData<PlantedFault> All => new(Faults);

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_where_it_is_missing_altered_hidden_or_late(PlantedFault fault) => fault.MustBeFound();

    [Fact]
    public void Nothing_is_found_where_it_stands_as_planned() =>
        Assert.Empty(FinishedSite.AuditRestricted(FinishedSite.RestrictedWith(Session, Title, Title)));

    private static PlantedFault Plant(string kind, string path, string said, string instead, string rules) =>
        new(kind, path, said, instead, rules) { IsRestricted = true };
}
