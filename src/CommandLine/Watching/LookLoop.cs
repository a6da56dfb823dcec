using System.Diagnostics;

namespace Gradus.CommandLine;

/// <summary>Looks at the folder when the system says that something changed, and every second without that: events get lost when
/// there are many, and when the folder itself is moved.</summary>
internal sealed class LookLoop(WatchedPractice practice, string folder, string? themeFolder, WatchText text, Action changed)
    : IDisposable
{
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(1);

    /// <summary>However large the folder is.</summary>
    private static readonly TimeSpan Seldom = TimeSpan.FromSeconds(5);

    /// <summary>No more than a fiftieth of the time goes into looking at what did not change.</summary>
    private const int Share = 50;

    private readonly AutoResetEvent wake = new(false);
    private FolderSignal? signal;
    private FolderSignal? themeSignal;

    /// <summary>Until somebody cancels.</summary>
    public void Run(CancellationToken end)
    {
        using var ended = end.Register(() => wake.Set());
        Listen();
        var wait = TimeSpan.Zero;
        while (!end.IsCancellationRequested)
        {
            var told = wake.WaitOne(wait);
            if (end.IsCancellationRequested)
                return;
            var (began, wasGone) = (Stopwatch.GetTimestamp(), practice.IsGone);
            var isOther = practice.Look(out var hurry);
            wait = hurry ?? (isOther ? Usual : Later(Stopwatch.GetElapsedTime(began)));
            if (practice.IsGone != wasGone)
                text.Line(
                    practice.IsGone
                        ? $"'{folder}' is not there any more. The pages stay as they were until it is there again."
                        : $"'{folder}' is there again."
                );
            // Who found something without being told, or lost the folder, listens to a folder that is another by now.
            // What happens between two ears is heard by neither, so it is looked at once more.
            if ((isOther && !told) || practice.IsGone != wasGone)
            {
                Listen();
                wait = hurry ?? TimeSpan.Zero;
            }

            if (isOther)
                changed();
        }
    }

    public void Dispose()
    {
        signal?.Dispose();
        themeSignal?.Dispose();
        wake.Dispose();
    }

    /// <param name="took">How long it took to see that nothing changed.</param>
    private static TimeSpan Later(TimeSpan took) =>
        took * Share > Seldom ? Seldom
        : took * Share > Usual ? took * Share
        : Usual;

    private void Listen()
    {
        signal?.Dispose();
        themeSignal?.Dispose();
        signal = new(folder, Wake);
        themeSignal = themeFolder is null ? null : new(themeFolder, Wake);
    }

    private void Wake()
    {
        try
        {
            wake.Set();
        }
        catch (ObjectDisposedException)
        {
            // The system told something behind the end.
        }
    }
}
