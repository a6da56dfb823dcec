using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>Code and templates on one side, the catalogue on the other: what one names the other has.</summary>
public sealed partial class CatalogueUseTests
{
    private static readonly Practice Practice = LittlePractice.Golden.Read();
    private static readonly Words English = Practice.Words.In("en") ?? throw new InvalidOperationException("No English.");

    /// <summary>Keys that are put together from a word and the name of a thing: every such name is a key.</summary>
    private static readonly string[] Composed =
    [
        .. Enumerable.Range(1, 12).Select(m => $"month-{m}"),
        .. Enum.GetNames<DayOfWeek>().Select(d => "weekday-" + d.ToLowerInvariant()),
        .. Enum.GetNames<StepKind>().Select(k => "step-" + Kebab.Of(k)),
        .. Enum.GetNames<StepKind>().Select(k => "guide-do-" + Kebab.Of(k)),
        .. Enum.GetNames<Stage>().Select(s => "stage-" + s.ToLowerInvariant()),
        .. Enum.GetNames<Position>().Select(p => "position-" + Kebab.Of(p)),
        .. Enum.GetNames<CautionKind>().Select(k => "kind-" + Kebab.Of(k)),
        .. from limb in new[] { "leg", "arm", "trunk" }
        from form in new[] { "left", "right", "each", "in-turn", "both", "working" }
        select $"{form}-{limb}",
        .. Enum.GetNames<AlternateKind>().Select(k => "instead-of-" + k.ToLowerInvariant()),
        .. Enum.GetNames<Stage>().Select(s => "stage-name-" + s.ToLowerInvariant()),
        .. from thing in new[] { "sets", "rounds", "times", "breaths", "reps", "metres" }
        from way in new[] { "more", "fewer" }
        select $"change-{thing}-{way}",
        .. from thing in Enum.GetNames<Verb>().Select(v => v.ToLowerInvariant()).Concat(["rest", "pause", "switch"])
        select $"change-{thing}",
        .. Region.All.Select(r => "region-" + Kebab.OfWords(r.Name)),
        .. from side in new[] { "left", "right" }
        from limb in new[] { "arm", "leg", "hand", "foot", "other" }
        select $"capital-{side}-{limb}",
        .. from limb in new[] { "arm", "leg", "hand", "foot" } select $"limb-{limb}",
        .. from said in new[] { "is", "means" }
        from limb in new[] { "arm", "leg", "hand", "foot", "other" }
        select $"role-{said}-{limb}",
        .. from condition in Practice.Conditions
        where condition.IsAlwaysAsked
        from said in new[] { "condition", "question" }
        select $"{said}-{condition.Id}",
        .. MotionName()
            .Matches(File.ReadAllText(Repository.Path("src", "Reading", "Motions", "motions.yaml")))
            .Select(m => "motion-" + Kebab.OfWords(m.Groups[1].Value)),
        .. from effort in new[] { 0, 2, 4, 6, 8, 10 } select $"guide-effort-at-{effort}",
        .. from reason in Enum.GetNames<NotTodayReason>() select "guide-skip-" + Kebab.Of(reason),
        "left",
        "right",
        "stance",
        "stance-in-sport",
    ];

    [GeneratedRegex("""Say\(\s*"([a-z0-9-]+)"[,)]""")]
    private static partial Regex Said();

    /// <summary>A key that stands as a text of its own, as those that a switch chooses between.</summary>
    [GeneratedRegex("\"([a-z][a-z0-9-]*)\"")]
    private static partial Regex Text();

    /// <summary>The beginning of a key that the code completes with the name of a thing.</summary>
    [GeneratedRegex("""Say\(\$?"([a-z]+-)(?:\{|" \+)""")]
    private static partial Regex Beginning();

    [GeneratedRegex("^- name: (.+)$", RegexOptions.Multiline)]
    private static partial Regex MotionName();

    [GeneratedRegex(@"words\.([a-z0-9_]+)")]
    private static partial Regex InTemplate();

    [Fact]
    public void Every_word_that_the_code_says_is_in_the_catalogue() =>
        Assert.Empty(Named(Repository.Files("src", ".cs"), Said()).Except(English.Keys).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_word_that_a_template_says_is_in_the_catalogue()
    {
        var named = Named(Repository.Files("themes/plain", ".html"), InTemplate()).Select(InCatalogue).ToHashSet();
        Assert.NotEmpty(named);
        Assert.Empty(named.Except(English.Keys).Order(StringComparer.Ordinal));
        Assert.All(named, key => Assert.NotNull(English.Plain(key)));
    }

    [Fact]
    public void Every_name_that_makes_a_key_has_its_word() => Assert.Empty(Composed.Except(English.Keys));

    [Fact]
    public void Every_word_of_the_catalogue_is_said_somewhere()
    {
        var used = Named(Repository.Files("src", ".cs"), Text())
            .Concat(Named(Repository.Files("themes/plain", ".html"), InTemplate()).Select(InCatalogue))
            .Concat(Composed);
        var beginnings = Named(Repository.Files("src", ".cs"), Beginning()).Distinct().ToArray();
        Assert.DoesNotContain(English.Keys.Except(used), key =>
            !beginnings.Any(b => key.StartsWith(b, StringComparison.Ordinal))
        );
    }

    private static string InCatalogue(string key) => key.Replace('_', '-');

    private static IEnumerable<string> Named(IEnumerable<string> files, Regex shape) =>
        files.SelectMany(file => shape.Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value));
}
