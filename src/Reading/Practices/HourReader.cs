using System.Globalization;

namespace Gradus.Reading;

/// <summary>A time of day under <c>hour</c>.</summary>
internal static class HourReader
{
    public static TimeOnly? Read(Fields fields)
    {
        if (fields.Mention("hour") is not { } hour)
            return null;
        fields.SourceFile.Note(hour, new ValueKind.Pattern("^([01][0-9]|2[0-3]):[0-5][0-9]$", IsOfDigits: false));
        if (TimeOnly.TryParseExact(hour.Value, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
            return time;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            hour.At,
            $"{Quote.Of(hour.Value)} is no time of day.",
            "Write hours and minutes in quotation marks, as \"18:30\".",
            hour.Value.Length
        );
        return null;
    }
}
