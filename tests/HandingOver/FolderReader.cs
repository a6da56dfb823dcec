using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace Gradus.Tests.HandingOver;

/// <summary>A client who reads two pages of a site again and again while it is published, both by their paths and from a folder
/// that was opened once and then holds still under its descriptor.</summary>
internal sealed partial class FolderReader : IDisposable
{
    private readonly string site;
    private readonly Thread thread;
    private volatile bool done;

    public FolderReader(string site)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "An opened folder is read through /proc.");
        this.site = site;
        thread = new Thread(Read);
        thread.Start();
    }

    public int Rounds { get; private set; }

    /// <summary>How often one of the two pages was not at its path, or was not whole.</summary>
    public int Missing { get; private set; }

    /// <summary>How often the two pages in one opened folder were of two editions.</summary>
    public int Mixed { get; private set; }

    public void Dispose()
    {
        done = true;
        thread.Join();
    }

    private void Read()
    {
        while (!done)
        {
            if (Edition(site, "index.html") is null)
                Missing++;
            if (Edition(site, "session-1.html") is null)
                Missing++;
            ReadOpened();
            Rounds++;
        }
    }

    private void ReadOpened()
    {
        var opened = Open(site, 0);
        if (opened < 0)
            return;
        var one = Edition($"/proc/self/fd/{opened}", "index.html");
        var other = Edition($"/proc/self/fd/{opened}", "session-1.html");
        if (one is not null && other is not null && one != other)
            Mixed++;
        _ = Close(opened);
    }

    private static string? Edition(string folder, string page)
    {
        try
        {
            var match = Paragraph().Match(File.ReadAllText(Path.Combine(folder, page)));
            return match.Success ? match.Groups[1].Value : null;
        }
        catch (IOException)
        {
            return null;
        }
    }

    [GeneratedRegex("<p>(.*)</p>", RegexOptions.CultureInvariant)]
    private static partial Regex Paragraph();

    [DllImport("libc", EntryPoint = "open", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int opened);
}
