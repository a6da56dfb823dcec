using System.Text;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One source file on the reader's desk: its text, and the pencil that marks what is wrong with it.</summary>
internal sealed class SourceFile
{
    private const int TextLimit = 256 * 1024;
    private const int TableLimit = 4 * 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly Findings findings;
    private readonly string[] lines;

    private SourceFile(string path, string text, Findings findings, FileNotes? notes)
    {
        Notes = notes;
        Path = path;
        Text = text;
        this.findings = findings;
        lines = text.Split('\n');
    }

    public string Path { get; }

    /// <summary>Lines end in <c>\n</c>, whatever the file has; no mark at the start.</summary>
    public string Text { get; }

    /// <summary>Where readers note what they ask of it; null where nobody wants to know.</summary>
    public FileNotes? Notes { get; }

    public Location Whole => Location.Whole(Path);

    /// <summary>The sheet, or null (and a finding) where the file is no text.</summary>
    public static SourceFile? Of(SourceFolder folder, string path, Findings findings)
    {
        if (BytesOf(folder, path) is not { } bytes)
            return Refused("This file cannot be opened.", "Look at who may read it, and whether another program holds it.");
        var limit = path.EndsWith(".csv", StringComparison.Ordinal) ? TableLimit : TextLimit;
        if (bytes.Length > limit)
            return Refused(
                $"This file has {(bytes.Length + 1023) / 1024} KiB; the most that is read is {limit / 1024} KiB.",
                "Shorten it, or take out what was pasted in by mistake."
            );
        try
        {
            var text = Lines(Strict.GetString(bytes).TrimStart('\uFEFF'));
            if (text.Any(ControlCharacters.Contains))
                return Refused("This file is no text: it holds control characters.", "Save it again as plain text.");
            var file = new SourceFile(path, text, findings, folder.Notes?.Of(path));
            UnseenLetters.Find(file);
            return file;
        }
        catch (DecoderFallbackException)
        {
            return Refused("This file is not in UTF-8.", "Save it again with the encoding UTF-8.");
        }

        SourceFile? Refused(string message, string help)
        {
            findings.Add(new(Faults.FileUnreadable, Level.Error, null, Location.Whole(path), message, help));
            return null;
        }
    }

    private static byte[]? BytesOf(SourceFolder folder, string path)
    {
        try
        {
            return folder.Read(path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>A line of the file, from 1.</summary>
    public string Line(int number) => number >= 1 && number <= lines.Length ? lines[number - 1] : "";

    /// <summary>A place on the sheet; what is missing behind the last line is missing at its end.</summary>
    public Location At(int line, int column) =>
        line <= lines.Length ? new(Path, line, column) : new(Path, lines.Length, lines[^1].Length + 1);

    /// <summary>Notes what a reader takes for a value; nothing where nobody wants to know.</summary>
    public void Note(YamlNode? value, ValueKind kind) => Notes?.Add(value, kind);

    /// <inheritdoc cref="Note(YamlNode?, ValueKind)"/>
    public void Note(Mention<string>? value, ValueKind kind)
    {
        if (value is not null)
            Notes?.Add(value.At, kind);
    }

    /// <param name="length">How much is marked; no more than there is on the line.</param>
    public void Fault(RuleId fault, Location at, string message, string help, int length = 1) =>
        findings.Add(Found(fault, Level.Error, at, message, help, length));

    public void Warn(RuleId fault, Location at, string message, string help, int length = 1) =>
        findings.Add(Found(fault, Level.Warning, at, message, help, length));

    /// <summary>What is to be said of a place, without saying it.</summary>
    public Finding Found(RuleId fault, Level level, Location at, string message, string help, int length) =>
        new(fault, level, null, at, message, help, Marked(at, length));

    /// <summary>The length with the quotation marks that stand around what is marked.</summary>
    private int Marked(Location at, int length)
    {
        var rest = Line(at.Line).Length - at.Column + 1;
        var quoted = rest > 0 && at.Column > 0 && length > 1 && Line(at.Line)[at.Column - 1] is '"' or '\'';
        return Math.Max(1, Math.Min(quoted && length < rest ? length + 2 : length, rest));
    }

    /// <summary>The line separators that no editor counts are blanks, so that lines are numbered as the author sees
    /// them.</summary>
    private static string Lines(string text) =>
        text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Replace('\u2028', ' ').Replace('\u2029', ' ');
}
