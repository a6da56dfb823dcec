using System.Security.Cryptography;
using System.Text;
using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>What a browser lets run because its hash is in the policy (CSP Level 3, 2.3.1 and 6.7.3).</summary>
public sealed class ContentPolicyTests
{
    private const string Text = "document.title = 'x' + \"?>~\"";

    private static readonly byte[] Bytes = Encoding.UTF8.GetBytes(Text);

    private static readonly Dictionary<string, string> Hashes = new(StringComparer.Ordinal)
    {
        ["256"] = Convert.ToBase64String(SHA256.HashData(Bytes)),
        ["384"] = Convert.ToBase64String(SHA384.HashData(Bytes)),
        ["512"] = Convert.ToBase64String(SHA512.HashData(Bytes)),
    };

    [Theory]
    [InlineData("script-src 'sha256-{256}'", true)]
    [InlineData("script-src 'sha384-{384}'", true)]
    [InlineData("script-src 'sha512-{512}'", true)]
    [InlineData("script-src 'SHA512-{512}'", true)]
    [InlineData("script-src 'self' 'sha256-{256}'", true)]
    [InlineData("script-src 'sha384-{256}'", false)]
    [InlineData("script-src 'sha256-{512}'", false)]
    [InlineData("script-src 'sha1-{256}'", false)]
    [InlineData("script-src sha256-{256}", false)]
    [InlineData("script-src 'sha256'", false)]
    [InlineData("style-src 'sha256-{256}'", false)]
    [InlineData("script-src-elem 'sha256-{256}'; script-src 'none'", true)]
    [InlineData("script-src-elem 'none'; script-src 'sha256-{256}'", false)]
    [InlineData("default-src 'sha256-{256}'", true)]
    [InlineData("default-src 'sha256-{256}'; script-src 'none'", false)]
    [InlineData("script-src 'none'; script-src 'sha256-{256}'", false)]
    [InlineData("", false)]
    public void A_script_runs_by_the_hash_of_its_text(string policy, bool runs)
    {
        var written = Hashes.Aggregate(policy, (p, h) => p.Replace($"{{{h.Key}}}", h.Value, StringComparison.Ordinal));
        Assert.Equal(runs, new ContentPolicy(written).Covers(Part(Text)));
        Assert.False(new ContentPolicy(written).Covers(Part(Text + " ")));
    }

    /// <summary>Base64 may be written with the letters that an address can have.</summary>
    [Fact]
    public void Both_ways_to_write_a_hash_count()
    {
        var texts = Enumerable.Range(0, 40).Select(n => $"f({n})").ToArray();
        Assert.All(texts, text =>
        {
            var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
            var policy = $"script-src 'sha256-{hash.Replace('+', '-').Replace('/', '_')}'";
            Assert.True(new ContentPolicy(policy).Covers(Part(text)));
        });
    }

    private static InlinePart Part(string text) => new("script", text, Location.Whole("index.html"));
}
