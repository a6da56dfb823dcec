using System.Text;
using Gradus.Domain;
using Gradus.Tests.House;
using Gradus.Tests.Media;

namespace Gradus.Tests.CommandLine;

/// <summary>A small practice with its theme and the words of a command, as they stand between two edits.</summary>
internal sealed class EditedPractice
{
    private readonly List<(SortedDictionary<string, byte[]> Sources, SortedDictionary<string, byte[]> Theme)> before = [];
    private (SortedDictionary<string, byte[]> Sources, SortedDictionary<string, byte[]> Theme)? first;

    /// <summary>What Ida and Joss follow.</summary>
    public const string Shared = "programmes/lunge.md";

    /// <summary>The form of sites that are hosted.</summary>
    public const string ByLink = "link";

    private const string Host = "https://example.org/t/";

    private const string Followed = "---\nfrom: lunge\nstart: 2026-12-07\n";
    private const string Difference = "change: calf-press\n    by-week: { 1: 2 x press 12 s at 50% }\n    from-week: 2";

    public EditedPractice()
    {
        Sources = In("tests/Auditing/little-practice");
        Theme = In("tests/Auditing/little-theme");
        foreach (var (id, name, of) in new[] { ("ida", "Ida Quennell", "tess"), ("joss", "Joss Verrall", "bram") })
            Add(id, name, of);
        Put(
            "clients/ida/client.yaml",
            Text("clients/ida/client.yaml").Replace("stance: right", "stance: left", StringComparison.Ordinal)
        );
        Put(Shared, Text("clients/tess/programme.md").Replace("start: 2026-12-07\n", "", StringComparison.Ordinal));
        Put("clients/ida/programme.md", $"{Followed}differences:\n  - {Difference}\n    because: agreed\n---\n");
        Put("clients/joss/programme.md", $"{Followed}---\nJoss, a few minutes after practice.\n");
        Put("conditions.yaml", Text("conditions.yaml").TrimEnd('\n') + "\n  not-with-for: { stages: [load] }\n");
        Sources["exercises/wall.png"] = MadePicture.Quarters(8, 8, "png");
        Put(
            "exercises/calf-press.md",
            Text("exercises/calf-press.md").Replace("long.\n", "long.\n\n![A wall](wall.png)\n", StringComparison.Ordinal)
        );
    }

    public SortedDictionary<string, byte[]> Sources { get; private set; }

    public SortedDictionary<string, byte[]> Theme { get; private set; }

    /// <summary>Of every programme.</summary>
    public static readonly DateOnly FirstDay = new(2026, 12, 7);

    public DateOnly Today { get; set; } = FirstDay;

    public string Form { get; set; } = "folder";

    /// <summary>As the command is told it. Nobody is hosted whose link would be made for it.</summary>
    public string[] FormWords =>
        Form != ByLink ? ["--as", Form]
        : Clients.All(c => Sources.ContainsKey($"clients/{c}/link.yaml")) ? ["--as-link", Host]
        : ["--as", "folder"];

    /// <summary>For whom the next publish is; empty for everybody.</summary>
    public string Client { get; set; } = "";

    public Series<string> Clients =>
        Sources
            .Keys.Where(p =>
                p.StartsWith("clients/", StringComparison.Ordinal) && p.EndsWith("/client.yaml", StringComparison.Ordinal)
            )
            .Select(p => p.Split('/')[1])
            .ToSeries();

    /// <summary>What stands in a client's link.</summary>
    public static string LinkOf(string client) => $"name: {("2" + client).PadRight(26, 'a')}\nhost: {Host}\n";

    public string Text(string path) => Encoding.UTF8.GetString(Sources[path]);

    public void Put(string path, string text) => Sources[path] = Encoding.UTF8.GetBytes(text);

    /// <summary>Says something else in place of one of several things that a file may say.</summary>
    public bool Exchange(
        SortedDictionary<string, byte[]> files,
        string path,
        Func<IReadOnlyList<string>, string> choose,
        params string[] said
    )
    {
        if (!files.TryGetValue(path, out var bytes))
            return false;
        var text = Encoding.UTF8.GetString(bytes);
        if (said.FirstOrDefault(s => text.Contains(s, StringComparison.Ordinal)) is not { } now)
            return false;
        files[path] = Encoding.UTF8.GetBytes(text.Replace(now, choose([.. said.Where(s => s != now)]), StringComparison.Ordinal));
        return true;
    }

    public void Add(string id, string name, string of)
    {
        var from = $"clients/{of}/";
        foreach (var (path, bytes) in Sources.Where(f => f.Key.StartsWith(from, StringComparison.Ordinal)).ToArray())
            if (!path.Contains("/editions/", StringComparison.Ordinal))
                Sources[$"clients/{id}/{path[from.Length..]}"] = bytes;
        var lines = Text($"clients/{id}/client.yaml").Split('\n');
        Put(
            $"clients/{id}/client.yaml",
            string.Join('\n', lines.Select(l => l.StartsWith("name: ", StringComparison.Ordinal) ? $"name: {name}" : l))
        );
    }

    public void Remove(string id)
    {
        foreach (var path in Sources.Keys.Where(p => p.StartsWith($"clients/{id}/", StringComparison.Ordinal)).ToArray())
            Sources.Remove(path);
    }

    /// <summary>What <c>publish</c> wrote into the sources.</summary>
    public void Take(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories))
            if (
                Path.GetRelativePath(folder, file).Replace('\\', '/') is var path
                && path.Contains("/editions/", StringComparison.Ordinal)
            )
                Sources[path] = File.ReadAllBytes(file);
    }

    public void Remember()
    {
        first ??= (new(Sources, StringComparer.Ordinal), new(Theme, StringComparer.Ordinal));
        before.Add((new(Sources, StringComparer.Ordinal), new(Theme, StringComparer.Ordinal)));
        if (before.Count > 12)
            before.RemoveAt(0);
    }

    /// <summary>As it was when it was remembered first, on the first day: what once stood in the way does not stay.</summary>
    public void BeginAgain()
    {
        if (first is var (sources, theme))
            (Sources, Theme) = (new(sources, StringComparer.Ordinal), new(theme, StringComparer.Ordinal));
        (Today, Form) = (FirstDay, "folder");
    }

    /// <summary>As it was some edits ago, editions too.</summary>
    public bool GoBack(int edits)
    {
        if (edits > before.Count)
            return false;
        var (sources, theme) = before[^edits];
        (Sources, Theme) = (new(sources, StringComparer.Ordinal), new(theme, StringComparer.Ordinal));
        return true;
    }

    public static void Write(SortedDictionary<string, byte[]> files, string folder)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        Directory.CreateDirectory(folder);
        foreach (var (path, bytes) in files)
        {
            var place = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(place) ?? folder);
            File.WriteAllBytes(place, bytes);
        }
    }

    private static SortedDictionary<string, byte[]> In(string folder)
    {
        var place = Repository.Path(folder.Split('/'));
        return new(
            Directory
                .EnumerateFiles(place, "*", SearchOption.AllDirectories)
                .ToDictionary(f => Path.GetRelativePath(place, f).Replace('\\', '/'), File.ReadAllBytes),
            StringComparer.Ordinal
        );
    }
}
