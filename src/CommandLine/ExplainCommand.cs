using System.CommandLine;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus explain [RULE]</c></summary>
internal static class ExplainCommand
{
    public static Command Words()
    {
        var rule = new Argument<string?>("RULE")
        {
            Description = "The rule, as a finding names it.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("explain", "Lists the rules, or explains one of them with examples.") { rule };
        command.SetAction(asked => Run(asked.GetValue(rule)));
        return command;
    }

    private static int Run(string? rule)
    {
        var pages = Explanations.All();
        if (rule is null)
        {
            foreach (var page in pages)
                Console.Out.WriteLine($"{page.Rule, -34} {page.Summary}");
            return Commands.Fine;
        }

        if (pages.FirstOrDefault(p => p.Rule.Text == rule) is { } found)
        {
            Console.Out.Write(found.Text);
            return Commands.Fine;
        }

        Console.Error.WriteLine(
            $"gradus: There is no rule '{rule}'. "
                + $"{Nearest.Ask(rule, pages.Select(p => p.Rule.Text), "'gradus explain' lists them all.")}"
        );
        return Commands.NotCarriedOut;
    }
}
