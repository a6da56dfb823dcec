using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.HandingOver;
using Gradus.Tests.House;
using Org.BouncyCastle.Crypto.Digests;
using Org.BouncyCastle.Crypto.Engines;
using Org.BouncyCastle.Crypto.Generators;
using Org.BouncyCastle.Crypto.Modes;
using Org.BouncyCastle.Crypto.Parameters;

namespace Gradus.Tests.HandingOver;

/// <summary>What <c>locked-file.md</c> says, against BouncyCastle, another library altogether; against Node's own crypto and the
/// browsers' in <c>tests/Browser</c>.</summary>
public sealed class LockedTextTests(ITestOutputHelper output)
{
    private const string Text = "<!doctype html>\n<p>Épée: the weapon arm is the LEFT arm. 剣\n";

    private static readonly Passphrase Words = Passphrase.Made();

    private static readonly string Locked = LockedText.Lock(Text, Words);

    private static readonly byte[] Key = LockedText.KeyOf(Words, LockedText.Read(Locked).Salt);

    [Fact]
    public void It_opens_by_the_same_passphrase_whatever_a_keyboard_made_of_it()
    {
        Assert.Equal(Text, LockedText.Open(Locked, Words));
        var typed = "\u00A0 " + Words.Text.ToUpperInvariant().Replace(" ", " \t", StringComparison.Ordinal) + "\n";
        Assert.Equal(Text, LockedText.Open(Locked, Passphrase.Typed(typed)));
    }

    [Fact]
    public void Another_passphrase_does_not_open_it()
    {
        var wrong = Assert.Throws<HandOverException>(() => LockedText.Open(Locked, Passphrase.Typed(Words.Text + "s")));
        Assert.Equal("This passphrase does not open the file.", wrong.Sentence);
    }

    [Fact]
    public void Nothing_of_it_is_ever_the_same_twice()
    {
        var lines = Enumerable.Range(0, 3).Select(_ => LockedText.Lock(Text, Words).Split('\n')).ToArray();
        Assert.All([1, 2, 3, 4], line => Assert.Equal(3, lines.Select(l => l[line]).Distinct(StringComparer.Ordinal).Count()));
    }

    [Fact]
    public void BouncyCastle_opens_it_by_the_page_that_describes_it()
    {
        var lines = Locked.Split('\n');
        Assert.Equal("gradus-locked 1", lines[0]);
        Assert.StartsWith("PBKDF2-SHA-256 600000 ", lines[1], StringComparison.Ordinal);
        var (salt, nonce, data) = (Behind(lines[1]), Behind(lines[2]), Convert.FromBase64String(lines[3]));
        var maker = new Pkcs5S2ParametersGenerator(new Sha256Digest());
        maker.Init(Encoding.UTF8.GetBytes(Words.Text), salt, 600_000);
        var cipher = new GcmBlockCipher(new AesEngine());
        cipher.Init(
            false,
            new AeadParameters(
                (KeyParameter)maker.GenerateDerivedMacParameters(256),
                128,
                nonce,
                Encoding.UTF8.GetBytes(string.Join('\n', lines[..3]))
            )
        );
        var text = new byte[cipher.GetOutputSize(data.Length)];
        var length = cipher.ProcessBytes(data, 0, data.Length, text, 0);
        cipher.DoFinal(text, length);
        Assert.Equal(Text, Encoding.UTF8.GetString(text));
        Assert.Equal(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', lines[..4]))), Behind(lines[4]));

        static byte[] Behind(string line) => Convert.FromBase64String(line.Split(' ')[^1]);
    }

    /// <summary>Half of them as a file is damaged on its way; half by somebody who makes the sum fit again.</summary>
    [Fact]
    public void A_changed_bit_is_refused_wherever_it_is()
    {
        var chance = new Chance(20260922);
        var (sentences, lines) = (new SortedDictionary<string, int>(StringComparer.Ordinal), new int[5]);
        var cases = LongProof.Cases(10_000);
        for (var n = 0; n < cases; n++)
        {
            var bytes = Encoding.Latin1.GetBytes(Locked);
            // The sum that is made to fit again is as it was.
            var at = chance.Below(n % 2 == 1 ? Locked.LastIndexOf('\n') : bytes.Length);
            bytes[at] ^= (byte)(1 << chance.Below(8));
            lines[Math.Min(4, Locked.AsSpan(0, at).Count('\n'))]++;
            var changed = Encoding.Latin1.GetString(bytes);
            if (n % 2 == 1)
                changed = Summed(changed);
            var refused = Assert.Throws<HandOverException>(() => LockedText.Open(LockedText.Read(changed), Key));
            sentences[refused.Sentence] = sentences.GetValueOrDefault(refused.Sentence) + 1;
        }

        foreach (var (sentence, count) in sentences)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count, 6}  {sentence}"));
        output.WriteLine($"of {cases}; by lines: {string.Join(", ", lines)}");
        Assert.True(sentences.Count >= 4);
        Assert.All(lines.Index().Where(l => l.Index != 0), line => Assert.True(line.Item > 0));
        Assert.Equal(Text, LockedText.Open(LockedText.Read(Summed(Locked)), Key));

        static string Summed(string text)
        {
            var lines = text.Split('\n');
            if (lines.Length != 5)
                return text;
            var whole = string.Join('\n', lines[..4]);
            return $"{whole}\nSHA-256 {Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(whole)))}";
        }
    }

    [Fact]
    public void A_file_cut_anywhere_is_refused()
    {
        for (var length = 0; length < Locked.Length; length++)
        {
            var refused = Assert.Throws<HandOverException>(() => LockedText.Read(Locked[..length]));
            Assert.Contains(
                refused.Sentence,
                (string[])["The file is not whole: its end is missing.", "The file was altered on its way."]
            );
        }
    }

    [Fact]
    public void One_of_a_later_version_says_so()
    {
        var later = Locked.Replace("gradus-locked 1", "gradus-locked 2", StringComparison.Ordinal);
        var refused = Assert.Throws<HandOverException>(() => LockedText.Read(later));
        Assert.Equal("The file was locked by another version of Gradus.", refused.Sentence);
    }
}
