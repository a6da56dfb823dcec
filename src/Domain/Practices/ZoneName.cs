namespace Gradus.Domain;

/// <summary>A time zone, as the IANA database calls it: Europe/London.</summary>
public sealed record ZoneName(string Text)
{
    public override string ToString() => Text;
}
