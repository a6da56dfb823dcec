using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The intake sheet of the demonstration practice, open in a browser over file:// and offline, with everything that the
/// browser says of it.</summary>
internal sealed class OpenSheet : IAsyncDisposable
{
    public static readonly Practice Practice = ReadPractice(SourceFolder.Open(Repository.Path("content")));

    public static readonly IntakeSheet Asked = AskedSheet.Of(Practice);

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-sheet-").FullName;
    private readonly List<string> troubles = [];

    private IBrowserContext context = null!;

    public IPage Page { get; private set; } = null!;

    public string Path => System.IO.Path.Combine(folder, "questions.html");

    /// <summary>What was asked for beside the page itself, and what the console said.</summary>
    public IReadOnlyList<string> Troubles => troubles;

    /// <param name="edit">What is done to the theme's script before the page is made.</param>
    public static async Task<OpenSheet> Open(
        IBrowser browser,
        BrowserNewContextOptions? options = null,
        Func<string, string>? edit = null,
        IntakeSheet? asked = null
    )
    {
        var sheet = new OpenSheet();
        await File.WriteAllTextAsync(
            sheet.Path,
            Rendered(asked ?? Asked, edit ?? (script => script)),
            TestContext.Current.CancellationToken
        );
        sheet.context = await browser.NewContextAsync(new(options ?? new()) { Offline = true });
        sheet.Page = await sheet.context.NewPageAsync();
        sheet.Page.Request += (_, request) => sheet.Note(request.Url != "file://" + sheet.Path, $"request: {request.Url}");
        sheet.Page.Console += (_, message) => sheet.Note(true, $"console {message.Type}: {message.Text}");
        sheet.Page.PageError += (_, error) => sheet.Note(true, $"error: {error}");
        sheet.Page.Dialog += (_, dialog) => sheet.Note(true, $"dialog: {dialog.Message}");
        await sheet.Page.GotoAsync("file://" + sheet.Path);
        return sheet;
    }

    public ILocator Question(string id) => Page.Locator($"[data-asked='{id}']");

    public ILocator Place(int number, string part) => Page.Locator("[data-place]").Nth(number - 1).Locator($"[data-{part}]");

    public Task<string> Status() => Page.Locator("#status").InnerTextAsync();

    /// <summary>Presses Tab until the keyboard is there.</summary>
    public async Task TabTo(string selector)
    {
        for (var presses = 0; presses < 200; presses++)
        {
            if (await Page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", selector))
                return;
            await Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"No Tab leads to {selector}.");
    }

    /// <summary>What the real download brings.</summary>
    /// <param name="save">How it is asked for; by a click where nothing is said.</param>
    public async Task<string> Saved(Func<Task>? save = null)
    {
        var download = await Page.RunAndWaitForDownloadAsync(save ?? (() => Page.ClickAsync("#save")));
        Assert.Equal("answers.yaml", download.SuggestedFilename);
        return await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
    }

    /// <summary>The file put as it is beside the client.yaml of a copy of the demonstration practice, whose client says nothing
    /// else of birth and health.</summary>
    public static Client ReadBack(string answers)
    {
        var files = SourceFiles().ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        var own = Encoding.UTF8.GetString(files["clients/nuala/client.yaml"]).Split('\n');
        var kept = own.Where(line =>
            !line.StartsWith("born:", StringComparison.Ordinal)
            && !line.StartsWith("answered:", StringComparison.Ordinal)
            && !line.StartsWith("answers:", StringComparison.Ordinal)
            && !line.StartsWith("  ", StringComparison.Ordinal)
        );
        files["clients/nuala/client.yaml"] = Encoding.UTF8.GetBytes(string.Join('\n', kept));
        files["clients/nuala/answers.yaml"] = Encoding.UTF8.GetBytes(answers);
        var client = ReadPractice(SourceFolder.Of(files)).Find(new ClientId("nuala"));
        return Assert.IsType<Client>(client);
    }

    /// <summary>Where what was read is other than what was filled in: "hernia: no, not yes".</summary>
    /// <param name="given">By condition, as an answers file has it; what is not there was left open.</param>
    public static IEnumerable<string> Differences(Client read, IReadOnlyDictionary<string, string> given) =>
        Asked
            .Questions.Select(q =>
                (q.Id, Read: Words(read.AnswerTo(q.Id)?.Reply), Given: given.GetValueOrDefault(q.Id.Text, "not asked"))
            )
            .Where(q => q.Read != q.Given)
            .Select(q => $"{q.Id}: {q.Read}, not {q.Given}");

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    private static string Words(Reply? reply) =>
        reply switch
        {
            null => "not asked",
            Reply.No => "no",
            Reply.Yes { Side: null } => "yes",
            Reply.Yes yes => $"yes, {yes.Side.ToString()?.ToLowerInvariant()}",
            Reply.Pains pains => string.Join(", ", pains.Places),
            _ => "unread",
        };

    private static string Rendered(IntakeSheet asked, Func<string, string> edit)
    {
        var files = Directory
            .EnumerateFiles(Repository.Path("themes", "plain"))
            .ToDictionary(f => System.IO.Path.GetFileName(f), File.ReadAllBytes, StringComparer.Ordinal);
        files["intake-sheet.js"] = Encoding.UTF8.GetBytes(edit(Encoding.UTF8.GetString(files["intake-sheet.js"])));
        var findings = new Findings();
        var page = IntakeSheetRenderer.Render(asked, new("plain", files), findings);
        Assert.Empty(findings);
        return page ?? "";
    }

    private static Practice ReadPractice(SourceFolder source)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(source, findings).Practice;
        Assert.Empty(findings.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.At} {f.Message}")));
        return Assert.IsType<Practice>(practice);
    }

    private static IEnumerable<KeyValuePair<string, byte[]>> SourceFiles()
    {
        var root = Repository.Path("content");
        return Directory
            .EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .Select(f => KeyValuePair.Create(System.IO.Path.GetRelativePath(root, f), File.ReadAllBytes(f)));
    }

    private void Note(bool isTrouble, string said)
    {
        if (isTrouble)
            troubles.Add(said);
    }
}
