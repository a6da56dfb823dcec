using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>The <c>log.csv</c> of one client of a practice, held by one process at a time until it is disposed. The file that
/// holds it, <c>.gradus-lock</c> beside it, is empty and stays there; a practice passes it over.</summary>
public sealed class KeptLog : IDisposable
{
    private const string LockName = Places.Mark + "lock";

    private readonly FileStream held;
    private readonly Places places;

    private KeptLog(Places places, FileStream held) => (this.places, this.held) = (places, held);

    /// <summary>Waits five seconds for another process, and removes what one that was killed left behind.</summary>
    /// <param name="practice">The folder that holds practice.md.</param>
    /// <exception cref="HandOverException">The client's folder cannot be used, or another process holds the log.</exception>
    public static KeptLog Open(string practice, ClientId client)
    {
        var log = Path.GetFullPath(Path.Combine(practice, LogFile.PathOf(client)));
        return Writing(log, () =>
        {
            var folder = Path.GetDirectoryName(log) ?? log;
            var held = HeldFile.Hold(Path.Combine(folder, LockName), busy =>
                new($"Somebody else is writing '{log}'.", "Wait until they are done, and receive it again.", busy)
            );
            try
            {
                if (Directory.Exists(log) || new FileInfo(log).LinkTarget is not null)
                    throw new HandOverException($"'{log}' is no file of its own.", "Move it away: the log is written there.");
                var places = new Places(log, Path.Combine(folder, Places.NewMark + LogFile.Name), "");
                Leftovers.Remove(places.New);
                return new KeptLog(places, held);
            }
            catch
            {
                held.Dispose();
                throw;
            }
        });
    }

    /// <summary>The whole path.</summary>
    public string Place => places.Site;

    /// <summary>Empty where there is none yet.</summary>
    /// <exception cref="HandOverException">It cannot be read.</exception>
    public byte[] Read() => Writing(Place, () => File.Exists(Place) ? File.ReadAllBytes(Place) : []);

    /// <summary>In one step: whoever looks sees the whole log of before or the whole new one, and does not return before the disk
    /// has it.</summary>
    /// <exception cref="HandOverException">It could not be done; the log of before still stands whole.</exception>
    public void Replace(byte[] log) => Writing(Place, () =>
        {
            places.Replace(() => NewFile.Build(places, log), NewFile.Put);
            return Place;
        });

    public void Dispose() => held.Dispose();

    private static T Writing<T>(string log, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw new HandOverException(
                $"'{log}' could not be written: {DiskTrouble.ReasonOf(cause)}.",
                "Nothing was added to it; put that right, and receive it again.",
                cause
            );
        }
    }
}
