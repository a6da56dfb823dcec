using System.CommandLine;
using System.CommandLine.Parsing;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>The words of the command line and what they mean. Exit status: 0 nothing at error level, 1 errors found, 2 the
/// command could not be carried out.</summary>
internal sealed class Commands
{
    internal const int Fine = 0;
    internal const int ErrorsFound = 1;
    internal const int NotCarriedOut = 2;

    /// <summary>How long a command that goes on until Ctrl-C may take to end after it.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly RootCommand root;

    private Commands(RootCommand root) => this.root = root;

    public static Commands All() => All(Forms.All);

    internal static Commands All(Forms forms)
    {
        var root = new RootCommand(
            "Publishes exercise programmes: a practice, which is a coaching business in plain text, "
                + "becomes a checked, private, offline site for each client."
        );
        root.Subcommands.Add(BeginCommand.Words());
        root.Subcommands.Add(NewCommand.Words());
        root.Subcommands.Add(PublishCommand.Words(forms));
        root.Subcommands.Add(AuditCommand.Words(forms));
        root.Subcommands.Add(CardCommand.Words());
        root.Subcommands.Add(OpenCommand.Words());
        root.Subcommands.Add(WatchCommand.Words());
        root.Subcommands.Add(CompareCommand.Words());
        root.Subcommands.Add(ScreenCommand.Words());
        root.Subcommands.Add(LoadCommand.Words());
        root.Subcommands.Add(RangesCommand.Words());
        root.Subcommands.Add(ReceiveCommand.Words());
        root.Subcommands.Add(ReviewCommand.Words());
        root.Subcommands.Add(GroupCommand.Words());
        root.Subcommands.Add(IntakeSheetCommand.Words());
        root.Subcommands.Add(FigureCommand.Words());
        root.Subcommands.Add(SchemasCommand.Words());
        root.Subcommands.Add(DoseCommand.Words());
        root.Subcommands.Add(ExplainCommand.Words());
        return new(root);
    }

    public async Task<int> RunAsync(string[] args)
    {
        if (args.Length == 0)
            return Refuse(
                $"Say what to do: {string.Join(", ", root.Subcommands.Select(c => c.Name))}. 'gradus --help' tells more."
            );
        var asked = root.Parse(args);
        if ((Swallowed(asked.CommandResult) ?? asked.UnmatchedTokens.FirstOrDefault()) is { } odd)
            return Refuse(Unknown(odd, asked.CommandResult.Command));
        if (asked.Errors.Count > 0)
            return Refuse(asked.Errors[0].Message);
        try
        {
            return await asked.InvokeAsync(
                new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = Patience }
            );
        }
        catch (HandOverException trouble)
        {
            return Refuse(trouble.Message);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return Refuse(trouble.Message);
        }
    }

    private static int Refuse(string message)
    {
        Console.Error.WriteLine($"gradus: {message.ReplaceLineEndings(" ")}");
        return NotCarriedOut;
    }

    private static string Unknown(string word, Command command)
    {
        string[] known =
        [
            .. command is RootCommand && !word.StartsWith('-')
                ? command.Subcommands.Select(c => c.Name)
                : command.Options.Select(o => o.Name),
        ];
        var (what, list) =
            word.StartsWith('-') ? ("option", $"Options of '{command.Name}'")
            : command is RootCommand ? ("command", "Commands")
            : ("word", $"Options of '{command.Name}'");
        return $"Unknown {what} '{word}'. {Nearest.Ask(word, known, $"{list}: {string.Join(", ", known)}.")}";
    }

    /// <summary>An unknown option before a value is taken for one: nothing that begins with a hyphen is a value here.</summary>
    private static string? Swallowed(CommandResult result) =>
        result.Children.SelectMany(c => c.Tokens).Select(t => t.Value).FirstOrDefault(v => v.StartsWith('-') && v != "-");
}
