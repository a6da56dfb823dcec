using System.Text;

namespace Gradus.Tests.CommandLine;

/// <summary>The console of this process, shared out: what is written on behalf of somebody who listens goes to that one alone,
/// however many listen at once, and everything else where it went before.</summary>
internal sealed class Overheard : TextWriter
{
    private static readonly Overheard Out = new(Console.Out);
    private static readonly Overheard Error = new(Console.Error);

    private readonly TextWriter otherwise;
    private readonly AsyncLocal<StringWriter?> listener = new();

    static Overheard()
    {
        Console.SetOut(Out);
        Console.SetError(Error);
    }

    private Overheard(TextWriter otherwise) => this.otherwise = otherwise;

    public override Encoding Encoding => otherwise.Encoding;

    private TextWriter Now => listener.Value ?? otherwise;

    public static (int Status, string Output, string Error) While(Func<Task<int>> work)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        // What is set inside the task is forgotten with it.
        var status = Task.Run(() =>
        {
            Out.listener.Value = output;
            Error.listener.Value = error;
            return work();
        });
        return (status.GetAwaiter().GetResult(), output.ToString(), error.ToString());
    }

    public override void Write(char value) => Now.Write(value);

    public override void Write(string? value) => Now.Write(value);

    public override void Write(ReadOnlySpan<char> buffer) => Now.Write(buffer);

    public override void Write(char[] buffer, int index, int count) => Now.Write(buffer, index, count);

    public override void Flush() => Now.Flush();
}
