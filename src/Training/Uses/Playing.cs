using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How a client plays: each sport with its stance, and what every name of a side means by that.</summary>
public sealed record Playing(Series<PlayedSport> Sports)
{
    /// <summary>A sport whose file could not be read is left out.</summary>
    public static Playing Of(Practice practice, Client client)
    {
        var sports =
            from played in client.Sports
            let sport = practice.Find(played.Sport.Value)
            where sport is not null
            select new PlayedSport(sport, played.Stance);
        return new(sports.ToSeries());
    }

    /// <summary>Every name that may be written: a role as its sport has it, with the sport's id before it where the role alone
    /// does not tell which; left and right.</summary>
    public Series<string> Names => [.. Roles.Select(NameOf).OfType<string>(), "left", "right"];

    /// <summary>The client's own side; null where the name is neither left nor right nor, without a doubt, one role of one
    /// sport.</summary>
    public Side? Resolve(string name) =>
        name switch
        {
            "left" => Side.Left,
            "right" => Side.Right,
            _ => Meant(name) is [var one] ? one.Side : null,
        };

    /// <summary>The role that a name stands for, as the client reads it; null where it stands for none.</summary>
    public RoleName? RoleOf(string name) => Meant(name) is [var one] ? RoleOf(one.In, one.Role) : null;

    public RoleName RoleOf(PlayedSport sport, Role role) =>
        new(role.Shown, Sports.Count(s => s.Sport.Roles.Any(r => r.Name == role.Name)) > 1 ? sport.Sport.Name : null);

    /// <summary>How to write each of the roles that a name could stand for. More than one where nobody can tell which is
    /// meant.</summary>
    public Series<string> NamesFor(string name) => Meant(name).Select(NameOf).OfType<string>().ToSeries();

    private IEnumerable<PlayedRole> Roles => Sports.SelectMany(s => s.Sport.Roles.Select(r => new PlayedRole(s, r)));

    private Series<PlayedRole> Meant(string name) => Roles.Where(r => r.Role.Name == name || r.InFull == name).ToSeries();

    private string? NameOf(PlayedRole role) =>
        new[] { role.Role.Name, role.InFull }.FirstOrDefault(name => Meant(name).Count == 1);

    private sealed record PlayedRole(PlayedSport In, Role Role)
    {
        public string InFull => $"{In.Sport.Id} {Role.Name}";

        public Side Side => Role.For(In.Stance);
    }
}

/// <param name="Stance">Right for the right-handed stance of the sport, left for its mirror image.</param>
public sealed record PlayedSport(Sport Sport, Side Stance);

/// <summary>A role as the client reads it.</summary>
/// <param name="Sport">The sport's name, where another sport of the client has a role of the same name; otherwise null.</param>
public sealed record RoleName(string Name, string? Sport)
{
    /// <summary>"front leg", "front leg in Épée fencing".</summary>
    public string In(Words words) => Sport is null ? Name : words.Say("role-in-sport", ("role", Name), ("sport", Sport));
}
