using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>A client who reads a zip again and again while it is published.</summary>
internal sealed class ZipReader : IDisposable
{
    private readonly string zip;
    private readonly Thread thread;
    private volatile bool done;

    public ZipReader(string zip)
    {
        this.zip = zip;
        thread = new Thread(Read);
        thread.Start();
    }

    public int Rounds { get; private set; }

    /// <summary>How often there was no zip, or not a whole one, or one of pages of two editions.</summary>
    public int Torn { get; private set; }

    public void Dispose()
    {
        done = true;
        thread.Join();
    }

    private void Read()
    {
        while (!done)
        {
            if (!IsWhole())
                Torn++;
            Rounds++;
        }
    }

    private bool IsWhole()
    {
        try
        {
            var pages = new ZipForm().Read(zip, ExampleSite.Rufus).Pages;
            return pages.Count == 41 && pages.All(page => page.Html == pages[0].Html);
        }
        catch (HandOverException)
        {
            return false;
        }
    }
}
