using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How a client plays: each sport with its stance, and what every name of a side means by that.</summary>
public sealed record Stances(Series<PlayedSport> Sports)
{
    /// <summary>A sport whose file could not be read is left out.</summary>
    public static Stances Of(Practice practice, Client client)
    {
        var sports =
            from played in client.Sports
            let sport = practice.Find(played.Sport.Value)
            where sport is not null
            select new PlayedSport(
                sport.Id,
                played.Stance,
                sport.Roles.Select(r => new PlayedRole(r.Name, r.For(played.Stance))).ToSeries()
            );
        return new(sports.ToSeries());
    }

    /// <summary>Every name that may be written: a role as its sport has it, with the sport's id before it where the role alone
    /// does not tell which; left and right.</summary>
    public Series<string> Names => [.. Roles.Select(NameOf).OfType<string>(), "left", "right"];

    /// <summary>The client's own side; null where the name is, without a doubt, no one role of one sport.</summary>
    public Side? Resolve(SideName name) =>
        name switch
        {
            SideName.Body(var side) => side,
            _ => Meant(name.Word) is [var one] ? one.Role.Side : null,
        };

    /// <summary>The role that a name stands for; null where it stands for none.</summary>
    public RoleMeant? RoleOf(SideName name) => Meant(name.Word) is [var one] ? RoleOf(one.In, one.Role) : null;

    public RoleMeant RoleOf(PlayedSport sport, PlayedRole role) =>
        new(sport.Sport, role.Name, Sports.Count(s => s.Roles.Any(r => r.Name == role.Name)) > 1);

    /// <summary>How to write each of the roles that a name could stand for. More than one where nobody can tell which is
    /// meant.</summary>
    public Series<string> NamesFor(SideName name) => Meant(name.Word).Select(NameOf).OfType<string>().ToSeries();

    private IEnumerable<RoleIn> Roles => Sports.SelectMany(s => s.Roles.Select(r => new RoleIn(s, r)));

    private Series<RoleIn> Meant(string name) => Roles.Where(r => r.Role.Name == name || r.InFull == name).ToSeries();

    private string? NameOf(RoleIn role) => new[] { role.Role.Name, role.InFull }.FirstOrDefault(name => Meant(name).Count == 1);

    private sealed record RoleIn(PlayedSport In, PlayedRole Role)
    {
        public string InFull => $"{In.Sport} {Role.Name}";
    }
}

/// <param name="Stance">Right for the right-handed stance of the sport, left for its mirror image.</param>
public sealed record PlayedSport(SportId Sport, Side Stance, Series<PlayedRole> Roles);

/// <param name="Name">In small letters, as a dose line is read.</param>
/// <param name="Side">What it means for this client.</param>
public sealed record PlayedRole(string Name, Side Side);

/// <param name="Role">In small letters.</param>
/// <param name="SaysSport">Whether another sport of the client has a role of the same name, so that the sport must be
/// said.</param>
public sealed record RoleMeant(SportId Sport, string Role, bool SaysSport);
