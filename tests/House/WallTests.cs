using System.Reflection;
using System.Xml.Linq;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Media;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.Tests.House;

/// <summary>The arrows that must never exist, and those that may.</summary>
public sealed class WallTests
{
    private static readonly Dictionary<string, string[]> Rooms = new(StringComparer.Ordinal)
    {
        ["Domain"] = [],
        ["Figures"] = ["Domain"],
        ["Media"] = ["Domain", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "System.IO.Hashing"],
        ["Reading"] = ["Domain", "Figures", "Markdig", "Media", "NodaTime", "Sep", "System.IO.Hashing", "YamlDotNet"],
        ["Training"] = ["Domain", "NodaTime"],
        ["Planning"] = ["Domain", "Figures", "NUglify", "Training"],
        ["Rendering"] = ["Domain", "Planning", "QRCoder", "Scriban.Signed"],
        ["Auditing"] = ["AngleSharp", "Domain", "Figures", "Media", "Planning", "Training"],
        ["HandingOver"] = ["Domain", "Planning", "System.IO.Hashing"],
        ["CommandLine"] =
        [
            "Auditing",
            "Domain",
            "Figures",
            "HandingOver",
            "Microsoft.AspNetCore.App",
            "Planning",
            "Reading",
            "Rendering",
            "System.CommandLine",
            "Training",
        ],
        ["ThemeCheck"] =
        [
            "Auditing",
            "Deque.AxeCore.Commons",
            "Domain",
            "HandingOver",
            "Microsoft.Playwright",
            "Planning",
            "Reading",
            "Rendering",
            "System.CommandLine",
            "Training",
        ],
    };

    [Fact]
    public void Each_room_refers_to_what_it_may_and_to_nothing_else()
    {
        Assert.Equal(
            Rooms.Keys.Order(StringComparer.Ordinal),
            Directory.GetDirectories(Repository.Path("src")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)
        );
        foreach (var (room, allowed) in Rooms)
        {
            var project = XDocument.Load(Repository.Path("src", room, room + ".csproj"));
            var references = project
                .Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension((string?)r.Attribute("Include") ?? ""))
                .Concat(
                    new[] { "PackageReference", "FrameworkReference" }
                        .SelectMany(kind => project.Descendants(kind))
                        .Select(r => (string?)r.Attribute("Include") ?? "")
                );
            Assert.Equal(allowed, references.Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void The_domain_stands_on_the_framework_alone()
    {
        Assert.All(typeof(Practice).Assembly.GetReferencedAssemblies(), a =>
            Assert.StartsWith("System.", a.Name, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Behind_the_training_nobody_sees_the_practice()
    {
        var judges = typeof(RuleBook).Assembly.GetTypes().Where(t => !MayJudgeThePractice(t));
        Type[] others = [typeof(Plan), typeof(SiteRenderer), typeof(Publication), typeof(MediaFile)];
        var types = judges.Concat(others.SelectMany(t => t.Assembly.GetTypes()));
        Assert.Empty(types.SelectMany(SignaturesWithPractice));
    }

    [Fact]
    public void A_signature_that_mentions_the_practice_would_be_found()
    {
        Assert.NotEmpty(SignaturesWithPractice(typeof(IPracticeRule)));
        Assert.NotEmpty(SignaturesWithPractice(typeof(PracticeReading)));
        Assert.NotEmpty(SignaturesWithPractice(typeof(TakesManyPractices)));
        Assert.NotEmpty(SignaturesWithPractice(typeof(Texts)));
    }

    [Fact]
    public void No_room_holds_more_than_a_third_of_the_code()
    {
        var lines = Rooms.Keys.ToDictionary(
            room => room,
            room => Repository.Files("src/" + room, ".cs").Sum(f => File.ReadLines(f).Count())
        );
        Assert.All(lines, room =>
            Assert.True(room.Value * 3 <= lines.Values.Sum(), $"{room.Key} has {room.Value} of {lines.Values.Sum()} lines.")
        );
    }

    /// <summary>A rule is a class that judges; what several of them share stands elsewhere.</summary>
    [Fact]
    public void The_folders_of_rules_hold_rules_and_their_pages_alone()
    {
        var rules = RuleBook.Rules.Select(r => r.GetType().Name).Order(StringComparer.Ordinal);
        var files = Repository
            .Files("src/Auditing/Rules", ".cs")
            .Where(f => Path.GetFileName(f) != "Rules.cs")
            .Select(f => Path.GetFileNameWithoutExtension(f));
        Assert.Equal(rules, files.Order(StringComparer.Ordinal));
        foreach (var file in Repository.Files("src/Auditing/Rules", ".cs"))
            Assert.DoesNotMatch(@"private .*Finding Wrong\(", File.ReadAllText(file));
    }

    [Fact]
    public void A_theme_sees_views_only()
    {
        var views = typeof(SiteRenderer)
            .Assembly.GetTypes()
            .Where(t => t.Name.EndsWith("View", StringComparison.Ordinal))
            .ToArray();
        Assert.True(views.Length > 10);
        foreach (var property in views.SelectMany(v => v.GetProperties()))
        {
            foreach (var type in Parts(property.PropertyType))
            {
                var plain =
                    type == typeof(string)
                    || type == typeof(bool)
                    || type == typeof(int)
                    || type == typeof(Series<>)
                    || type.Assembly == typeof(SiteRenderer).Assembly;
                Assert.True(
                    plain || property.Name == "EqualityContract",
                    $"{property.DeclaringType?.Name}.{property.Name} shows a theme {type}"
                );
            }
        }
    }

    [Fact]
    public void No_rule_leans_on_another_rule()
    {
        var rules = RuleBook.Rules.Select(r => r.GetType().Name).ToArray();
        foreach (var file in Repository.Files("src/Auditing/Rules", ".cs"))
        {
            var text = File.ReadAllText(file);
            var own = Path.GetFileNameWithoutExtension(file);
            Assert.DoesNotContain(rules, rule => rule != own && text.Contains(rule + "(", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void No_rule_touches_the_parser_of_pages()
    {
        foreach (
            var file in Repository.Files("src/Auditing/Rules", ".cs").Append(Repository.Path("src", "Auditing", "RuleBook.cs"))
        )
            Assert.DoesNotContain("AngleSharp", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Disk_and_console_stand_behind_named_doors()
    {
        string[] doors =
        [
            "src/CommandLine/",
            "src/HandingOver/",
            "src/Reading/Sources/SourceFolder.cs",
            "src/Rendering/ThemeFolder.cs",
            "src/ThemeCheck/",
        ];
        foreach (var file in Repository.Files("src", ".cs"))
        {
            var path = Path.GetRelativePath(Repository.Root, file);
            if (doors.Any(d => path.StartsWith(d, StringComparison.Ordinal)))
                continue;
            var text = File.ReadAllText(file);
            foreach (
                var word in new[]
                {
                    "Console.",
                    "Directory.",
                    "File.Read",
                    "File.Write",
                    "File.Open",
                    "File.Exists",
                    "Environment.",
                    "Process.",
                }
            )
                Assert.False(text.Contains(word, StringComparison.Ordinal), $"{path} uses {word}");
        }
    }

    /// <summary>The rules on sources, what they share, and the book that holds the rules.</summary>
    private static bool MayJudgeThePractice(Type type) =>
        typeof(IPracticeRule).IsAssignableFrom(type)
        || typeof(IClientRule).IsAssignableFrom(type)
        || type.Namespace == "Gradus.Auditing.Sources"
        || type.GetFields().Any(f => f.IsStatic && f.FieldType == typeof(Series<IRule>))
        || (type.DeclaringType is { } outer && MayJudgeThePractice(outer));

    private static IEnumerable<string> SignaturesWithPractice(Type type)
    {
        const BindingFlags All =
            BindingFlags.Public
            | BindingFlags.NonPublic
            | BindingFlags.Instance
            | BindingFlags.Static
            | BindingFlags.DeclaredOnly;
        var mentioned = type.GetMethods(All)
            .SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType).Select(t => (m.Name, Type: t)))
            .Concat(type.GetConstructors(All).SelectMany(c => c.GetParameters().Select(p => (c.Name, Type: p.ParameterType))))
            .Concat(type.GetFields(All).Select(f => (f.Name, Type: f.FieldType)));
        return mentioned.Where(m => Parts(m.Type).Contains(typeof(Practice))).Select(m => $"{type.Name}.{m.Name}");
    }

    /// <summary>A type and everything it is put together from.</summary>
    private static IEnumerable<Type> Parts(Type type)
    {
        if (type.HasElementType && type.GetElementType() is { } element)
            return Parts(element);
        return type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition()) : [type];
    }

    private sealed record TakesManyPractices(IReadOnlyList<Practice[]> Practices);
}
