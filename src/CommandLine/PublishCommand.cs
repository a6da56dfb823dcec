using System.CommandLine;
using System.CommandLine.Parsing;
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
        var link = new Option<string?>("--as-link")
        {
            Description =
                "A folder for a host under a name that nobody can guess, beside what --as says; BASE is the address that it "
                + "is put into there, by https.",
            HelpName = "BASE",
            CustomParser = Host,
        };
        var rotate = new Option<bool>("--rotate") { Description = "With --as-link: another link than before; the old one ends." };
        var today = Options.Today();
        var command = new Command("publish", "Checks a practice and makes each client's site.")
        {
            folder,
            to,
            clients,
            part,
            form,
            passphrase,
            link,
            rotate,
            theme,
            today,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(rotate) && result.GetResult(link) is null)
                result.AddError("--rotate goes with --as-link: say where the sites are hosted.");
            if (
                result.GetResult(passphrase) is { Implicit: false }
                && !(result.GetValue(form) ?? []).Contains(new LockedForm().Word, StringComparer.Ordinal)
            )
                result.AddError("--passphrase goes with --as locked: nothing else has one.");
        });
        command.SetAction(asked =>
        {
            var offered = forms.With(AskPassphrase.FormOf(asked.GetRequiredValue(passphrase)));
            var host = asked.GetValue(link);
            // Who asks for a link alone is not given a folder that tells whose it is.
            string[] said =
                host is not null && asked.GetResult(form) is null or { Implicit: true }
                    ? []
                    : asked.GetValue(form) ?? [forms.Usual.Word];
            return new PublishRun(
                offered,
                asked.GetRequiredValue(folder),
                asked.GetRequiredValue(to),
                asked.GetValue(clients) ?? [],
                asked.GetValue(part),
                asked.GetValue(theme),
                offered.InOrder.Where(f => said.Contains(f.Word)).ToSeries(),
                new Linking(host, asked.GetValue(rotate)),
                asked.GetValue(today) ?? Clock.Today()
            ).Status();
        });
        return command;
    }

    private static string? Host(ArgumentResult result)
    {
        var said = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (SiteLink.HostOf(said) is { } host)
            return host;
        result.AddError(
            $"'{said}' is no address that a site can be hosted at. "
                + "Write the address of a folder, as https://example.org/training/, with nothing behind it."
        );
        return null;
    }

    private static string Each(Forms forms)
    {
        var all = forms.InOrder.Select(f => f.Help).ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])}, or {all[^1]}";
    }
}
