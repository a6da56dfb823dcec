using System.Reflection;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.ThemeCheck;

/// <summary>A practice that is hard on a theme: long words and letters, many signs, two sports, twelve weeks, a picture and a
/// clip; and a client who reads from right to left, in a language that is none.</summary>
internal static class TorturePractice
{
    private const string Prefix = "Torture/";
    private const string RightToLeft = "he";

    /// <summary>The plan of each client.</summary>
    public static Series<Plan> Plans()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(Files()), findings).Practice;
        if (practice is null || findings.Any(f => f.Level == Level.Error))
            throw new InvalidOperationException(string.Join('\n', findings.Select(f => $"{f.At} {f.Message}")));
        return practice
            .Clients.Select(client =>
            {
                var training = Training.Of(practice, client);
                return Plan.For(training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, training));
            })
            .ToSeries();
    }

    /// <summary>The client's site with that theme; null and a finding where the theme cannot be filled.</summary>
    public static Site? Site(Plan plan, Theme theme, Findings findings) => SiteRenderer.Render(plan, theme, findings);

    private static IEnumerable<KeyValuePair<string, byte[]>> Files()
    {
        var room = Assembly.GetExecutingAssembly();
        foreach (var name in BuiltIn.Names(room).Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            var path = name[Prefix.Length..].Replace('\\', '/');
            var bytes = BuiltIn.Bytes(room, name);
            yield return KeyValuePair.Create(path, bytes);
            if (path.StartsWith("cautions/", StringComparison.Ordinal))
                yield return KeyValuePair.Create(
                    path.Replace(".md", $".{RightToLeft}.md", StringComparison.Ordinal),
                    Encoding.UTF8.GetBytes(Translated(Encoding.UTF8.GetString(bytes)))
                );
        }

        yield return KeyValuePair.Create($"words/{RightToLeft}.yaml", Encoding.UTF8.GetBytes(MadeUpWords.In(RightToLeft)));
    }

    /// <summary>A caution in other letters: its title, and what stands below the header.</summary>
    private static string Translated(string caution)
    {
        var parts = caution.Split("---\n");
        var title = parts[1].Split('\n').First(l => l.StartsWith("title: ", StringComparison.Ordinal))["title: ".Length..];
        return $"---\ntitle: {MadeUpWords.InOtherLetters(title)}\n---\n{MadeUpWords.InOtherLetters(parts[2])}";
    }
}
