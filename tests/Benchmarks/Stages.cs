namespace Gradus.Tests.Benchmarks;

/// <summary>What the stages are called in the table.</summary>
internal static class Stages
{
    public const string Reading = "reading";
    public const string Checking = "checking";

    /// <summary>Whether an error stands in a client's way, asked before the plan and before the site is written.</summary>
    public const string Blocking = "blocking";
    public const string Planning = "planning";
    public const string Rendering = "rendering";
    public const string Auditing = "auditing";
    public const string Writing = "writing";
    public const string WritingAgain = "writing, unchanged";

    /// <summary>What the floor of each stage is; the stages without one have only their own arithmetic to do.</summary>
    public static readonly IReadOnlyDictionary<string, string> Floors = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Reading] = "the Markdown bodies through Markdig once, the YAML through YamlDotNet once",
        [Rendering] = "as many pages of about the bytes from a bare Scriban template that escapes",
        [Auditing] = "each finished page through AngleSharp once",
        [Writing] = "the same bytes into new folders, not flushed",
        [WritingAgain] = "the same files read once",
    };
}
