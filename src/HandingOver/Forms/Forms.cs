using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>The forms in which a command hands sites over, in the order in which it offers them.</summary>
public sealed record Forms(Series<IForm> InOrder)
{
    /// <summary>Those that come with Gradus. A new form is a folder beside this file, and a line here.</summary>
    public static Forms All { get; } = new([new FolderForm(), new ZipForm(), new PageForm(), new LockedForm()]);

    /// <summary>The one that is meant where nobody says which.</summary>
    public IForm Usual => InOrder[0];

    /// <summary>The same, with another form in the place of the one of its word.</summary>
    public Forms With(IForm form) => new(InOrder.Select(own => own.Word == form.Word ? form : own).ToSeries());

    public IForm Named(string word) => InOrder.Single(form => form.Word == word);

    /// <summary>The sites of the client that stand in the target, in the order of the forms: none, one or several.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public Series<StandingSite> Standing(ClientId client, string target) =>
        DiskTrouble.Reading(target, () => StandingSite.Of(client, target, InOrder));

    /// <summary>The day on which the site that stands in the target was put there, the latest one where several forms stand; null
    /// where there is none.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public DateOnly? DateOf(ClientId client, string target) =>
        Standing(client, target).Select(site => (DateOnly?)DateOnly.FromDateTime(Directory.GetLastWriteTime(site.Place))).Max();

    /// <summary>The clients whose site stands in the target, in whichever form, and who are not among the given, in ordinal
    /// order. They are named, never deleted. A target that is not there has none.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public Series<ClientId> Strangers(string target, IEnumerable<ClientId> clients)
    {
        var known = clients.ToHashSet();
        if (!Directory.Exists(target))
            return [];
        return DiskTrouble.Reading(target, () =>
            StandingSite.ClientsIn(target, InOrder).Where(client => !known.Contains(client)).ToSeries()
        );
    }
}
