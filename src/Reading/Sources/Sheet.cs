using System.Text;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One source file on the reader's desk: its text, and the pencil that marks what is wrong with it.</summary>
internal sealed class Sheet
{
    private const int TextLimit = 256 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly Findings findings;
    private readonly string[] lines;

    private Sheet(string path, string text, Findings findings)
    {
        Path = path;
        Text = text;
        this.findings = findings;
        lines = text.Split('\n');
    }

    public string Path { get; }

    /// <summary>Lines end in <c>\n</c>, whatever the file has; no mark at the start.</summary>
    public string Text { get; }

    public Location Whole => Location.Whole(Path);

    /// <summary>The sheet, or null (and a finding) where the file is no text.</summary>
    public static Sheet? Of(SourceFolder folder, string path, Findings findings)
    {
        var bytes = folder.Read(path);
        if (bytes.Length > TextLimit)
            return Refused($"This file has {bytes.Length / 1024} KiB; the most that is read is 256 KiB.", "Shorten it, or take out what was pasted in by mistake.");
        try
        {
            var text = Strict.GetString(bytes).TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
            if (text.AsSpan().IndexOfAnyInRange('\0', '\u0008') >= 0)
                return Refused("This file is no text: it holds control characters.", "Save it again as plain text.");
            return new(path, text, findings);
        }
        catch (DecoderFallbackException)
        {
            return Refused("This file is not in UTF-8.", "Save it again with the encoding UTF-8.");
        }

        Sheet? Refused(string message, string help)
        {
            findings.Add(new(Faults.FileUnreadable, Level.Error, null, Location.Whole(path), message, help));
            return null;
        }
    }

    /// <summary>A line of the file, from 1.</summary>
    public string Line(int number) => number >= 1 && number <= lines.Length ? lines[number - 1] : "";

    public Location At(int line, int column) => new(Path, line, column);

    public void Fault(RuleId fault, Location at, string message, string help, int length = 1) =>
        findings.Add(new(fault, Level.Error, null, at, message, help, length));

    public void Warn(RuleId fault, Location at, string message, string help, int length = 1) =>
        findings.Add(new(fault, Level.Warning, null, at, message, help, length));
}
