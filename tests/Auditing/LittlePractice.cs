using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>What the examples of the rules' pages are made from: a practice with two clients and two exercises, and a theme with
/// nothing to it. Both are folders beside this file.</summary>
internal static class LittlePractice
{
    public static readonly DateOnly Today = new(2026, 12, 7);

    public static readonly Series<KeyValuePair<string, string>> Files = In("little-practice");

    public static readonly Series<KeyValuePair<string, string>> Theme = In("little-theme");

    private static Series<KeyValuePair<string, string>> In(string name)
    {
        var folder = Repository.Path("tests", "Auditing", name);
        return Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => KeyValuePair.Create(Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllText(file)))
            .OrderBy(file => file.Key, StringComparer.Ordinal)
            .ToSeries();
    }
}
