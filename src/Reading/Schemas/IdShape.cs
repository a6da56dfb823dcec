namespace Gradus.Reading;

/// <summary>An id as a schema can say it; which names a system keeps for a device is for the reader.</summary>
internal static class IdShape
{
    public static readonly ValueKind Kind = new ValueKind.Pattern("^[a-z][a-z0-9-]{0,63}$", IsOfDigits: false);
}
