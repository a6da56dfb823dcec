using Gradus.Tests.House;

[assembly: AssemblyFixture(typeof(Gradus.Tests.CommandLine.PublishedDemonstration))]

namespace Gradus.Tests.CommandLine;

/// <summary>The demonstration practice, published once by the real command in a process of its own, for all tests that begin
/// there. Nobody writes into the folder.</summary>
public sealed class PublishedDemonstration : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-published-").FullName;
    private readonly Lazy<Answer> answer;

    public PublishedDemonstration() =>
        answer = new(() => Gradus.RunApart([], "publish", Repository.Path("content"), "--to", Sites, "--today", "2026-12-07"));

    internal Answer Answer => answer.Value;

    private string Sites => Path.Combine(folder, "sites");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Where the sites are, one folder for each client.</summary>
    internal string Read()
    {
        Assert.Equal((0, ""), (Answer.Status, Answer.Error));
        return Sites;
    }

    /// <summary>The sites once more, with what the publisher keeps for itself, to be changed or published over.</summary>
    internal void CopyTo(string place) => Folders.Copy(Read(), place);
}
