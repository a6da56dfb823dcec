using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>One page that holds all others, locked: it asks for a passphrase before it shows anything.</summary>
/// <param name="ask">Asks somebody for the passphrase of a client's file; null where nobody is asked: then a new file gets one
/// that Gradus makes, and none that stands is opened.</param>
/// <param name="anew">Whether a file that stands is locked again, with another passphrase, though nothing in it changed.</param>
public sealed class LockedForm(Func<ClientId, string>? ask = null, bool anew = false) : IForm
{
    /// <summary>A locked text is longer than the page in it by a third, and the page around it is small.</summary>
    private const long Largest = PublishedSite.LargestWhole / 3L * 4 + PublishedSite.MiB;

    public string Word => "locked";

    public string Help => "as one page that opens with a passphrase";

    public Rendition Takes => Rendition.Locked;

    public string Ending => ".locked" + PagePath.Ending;

    public bool IsReadable => ask is not null;

    public bool MayStand => !anew;

    public PublicationResult Write(Site site, TargetFolder target)
    {
        var places = Places.Of(target.Root, site.Client, Ending);
        var inside = site.Pages.Single(p => p.Path == PagePath.AllPages).Html;
        var opener = site.Pages.Single(p => p.Path == PagePath.Lock).Html;
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            MarkedPage.RefuseOther(places.Site, "a locked page", LockPage.Before, Largest);
            var passphrase = ask is null ? Passphrase.Made() : Passphrase.Own(ask(site.Client));
            var locked = LockPage.Before + '\n' + LockedText.Lock(inside, passphrase) + '\n' + LockPage.Behind;
            var bytes = Encoding.UTF8.GetBytes(
                opener.Replace(LockPage.Before + LockPage.Behind, locked, StringComparison.Ordinal)
            );
            places.Replace(() => NewFile.Build(places, bytes), NewFile.Put);
            return new PublicationResult(site.Client, places.Site, true, [PagePath.AllPages], [], [], 1, bytes.Length)
            {
                Passphrase = ask is null ? passphrase : null,
            };
        });
    }

    /// <summary>Whether a locked page stands there, whoever's it is.</summary>
    public bool Stands(string place, ClientId client) => MarkedPage.Stands(place, LockPage.Before, Largest);

    public string? HashOf(string place) => SiteHash.OfFile(place);

    /// <summary>The page that was locked, and the one around it.</summary>
    /// <exception cref="HandOverException">It is not there, cannot be read, is too large, or does not open.</exception>
    public Site Read(string place, ClientId client)
    {
        var written = TextOf(place);
        var (locked, around) = Apart(written, place);
        var inside = LockedText.Open(locked, Passphrase.Typed(ask?.Invoke(client) ?? ""));
        return PublishedSite.Of(
            place,
            client,
            [
                new SiteFile(PagePath.AllPages, Encoding.UTF8.GetBytes(inside)),
                new SiteFile(PagePath.Lock, Encoding.UTF8.GetBytes(around)),
            ]
        );
    }

    /// <summary>The page that is locked in a file.</summary>
    /// <exception cref="HandOverException">It is not there, cannot be read, is too large, or does not open.</exception>
    public static string Open(string place, Func<string> passphrase)
    {
        var locked = Apart(TextOf(place), place).Locked;
        // What is cut or damaged is said before anybody types six words.
        LockedText.Read(locked);
        return LockedText.Open(locked, Passphrase.Typed(passphrase()));
    }

    public string Said(PublicationResult result) =>
        result switch
        {
            { Changed: false } => $"one locked page, nothing changed; it opens with the passphrase that it had: {result.Place}",
            { Passphrase: null } => $"one locked page, new or changed: {result.Place}",
            { Passphrase: { } passphrase } => $"""
                one locked page, new or changed: {result.Place}
                  It opens with: {passphrase.Text}
                  This is shown once and kept nowhere. Say it on the phone, or send it another way than the file.
                """,
        };

    private static (string Locked, string Around) Apart(string written, string place)
    {
        var from = written.IndexOf(LockPage.Before, StringComparison.Ordinal);
        if (from < 0)
            throw new HandOverException($"'{place}' is no locked page.", "Name a file that 'gradus publish --as locked' wrote.");
        from += LockPage.Before.Length;
        var to = written.IndexOf('<', from);
        return to < 0 ? (written[from..], written[..from]) : (written[from..to], written[..from] + written[to..]);
    }

    private static string TextOf(string place) =>
        DiskTrouble.Reading(place, () =>
            new FileInfo(place).Length <= Largest
                ? File.ReadAllText(place, Encoding.UTF8)
                : throw new HandOverException(
                    $"'{place}' is larger than {Largest / PublishedSite.MiB} MiB.",
                    "Publish the site again."
                )
        );
}
