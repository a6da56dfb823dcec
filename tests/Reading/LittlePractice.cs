using System.Collections.Immutable;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>A practice that is not on the disk, as text, edited from test to test. The people of Sluice Lane are
/// invented.</summary>
internal sealed class LittlePractice
{
    /// <summary>Every key that reading knows, each with a value of its own.</summary>
    public static readonly LittlePractice Golden = new(
        GoldenFiles.All.ToImmutableSortedDictionary(f => f.Path, f => Encoding.UTF8.GetBytes(f.Text), StringComparer.Ordinal)
    );

    private readonly ImmutableSortedDictionary<string, byte[]> files;

    private LittlePractice(ImmutableSortedDictionary<string, byte[]> files) => this.files = files;

    public IEnumerable<KeyValuePair<string, byte[]>> Files => files;

    public SourceFolder Folder => SourceFolder.Of(files);

    public string this[string path] => Encoding.UTF8.GetString(files[path]);

    public LittlePractice With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public LittlePractice With(string path, byte[] bytes) => new(files.SetItem(path, bytes));

    public LittlePractice Without(string path)
    {
        Assert.True(files.ContainsKey(path), $"There is no {path} to take away.");
        return new(files.Remove(path));
    }

    /// <summary>The practice with one passage of one file written anew. The passage must stand there once.</summary>
    public LittlePractice Edit(string path, string passage, string replacement)
    {
        var text = this[path];
        var at = text.IndexOf(passage, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{path} does not hold '{passage}'.");
        Assert.True(text.IndexOf(passage, at + 1, StringComparison.Ordinal) < 0, $"{path} holds '{passage}' more than once.");
        return With(path, text[..at] + replacement + text[(at + passage.Length)..]);
    }

    /// <summary>What reading says, in the order in which it is shown.</summary>
    public Series<Finding> Findings()
    {
        var findings = new Findings();
        PracticeReader.Read(Folder, findings);
        return findings.InOrder().ToSeries();
    }

    /// <summary>The practice, in which nothing may be found.</summary>
    public Practice Read()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(Folder, findings).Practice;
        Assert.Empty(findings.InOrder().Select(f => $"{f.At} {f.Message}"));
        return Assert.IsType<Practice>(practice);
    }

    public Client Client(string id)
    {
        var client = Read().Find(new ClientId(id));
        return Assert.IsType<Client>(client);
    }

    public Plan Plan(string client)
    {
        var practice = Read();
        return Planned.For(
            practice,
            practice.Find(new ClientId(client)) ?? throw new ArgumentException($"No client '{client}'.", nameof(client))
        );
    }
}
