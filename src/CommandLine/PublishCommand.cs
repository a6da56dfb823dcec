using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary><c>gradus publish FOLDER --to DIR</c></summary>
internal static class PublishCommand
{
    public static Command Words(Forms forms)
    {
        var folder = Options.Folder();
        var to = new Option<string>("--to")
        {
            Description = "Where the sites go: one folder for each client.",
            HelpName = "DIR",
            Required = true,
        };
        var clients = Options.Clients();
        var part = Options.Part();
        var theme = Options.Theme();
        var form = Options.Choices(
            "--as",
            $"How each site is handed over: {Each(forms)}; several with commas between them.",
            [.. forms.InOrder.Select(f => f.Word)]
        );
        var passphrase = Options.Passphrase(
            "How locked sites are opened: made, six words for each that is new; anew, six other words for each; ask, asks for "
                + "a passphrase of your own for each.",
            "made",
            "anew",
            "ask"
        );
        var today = Options.Today();
        var command = new Command("publish", "Checks a practice and makes each client's site.")
        {
            folder,
            to,
            clients,
            part,
            form,
            passphrase,
            theme,
            today,
        };
        command.SetAction(asked =>
        {
            var offered = forms.With(AskPassphrase.FormOf(asked.GetRequiredValue(passphrase)));
            return new PublishRun(
                offered,
                asked.GetRequiredValue(folder),
                asked.GetRequiredValue(to),
                asked.GetValue(clients) ?? [],
                asked.GetValue(part),
                asked.GetValue(theme),
                offered.InOrder.Where(f => (asked.GetValue(form) ?? [forms.Usual.Word]).Contains(f.Word)).ToSeries(),
                asked.GetValue(today) ?? Clock.Today()
            ).Status();
        });
        return command;
    }

    private static string Each(Forms forms)
    {
        var all = forms.InOrder.Select(f => f.Help).ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])}, or {all[^1]}";
    }
}
