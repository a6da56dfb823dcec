using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>A value → a hash that is the same on every machine. Every field of every record counts, by name, so that a new one
/// cannot be forgotten; what rides along (<see cref="Aside{T}"/>) does not.</summary>
internal static class Fingerprint
{
    private static readonly ConcurrentDictionary<Type, FieldInfo[]> Fields = new();

    /// <exception cref="NotSupportedException">Something in it is no value of the kinds that are known here.</exception>
    public static string Of(object value)
    {
        var text = new StringBuilder();
        Write(text, value);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case string words:
                text.Append(CultureInfo.InvariantCulture, $"{words.Length}:").Append(words);
                break;
            case Enum or bool:
                text.Append(value);
                break;
            case DateOnly or DateTime or TimeOnly:
                text.Append(((IFormattable)value).ToString("O", CultureInfo.InvariantCulture));
                break;
            case decimal number:
                text.Append(number.ToString("G29", CultureInfo.InvariantCulture));
                break;
            case int or long:
                text.Append(((IFormattable)value).ToString(null, CultureInfo.InvariantCulture));
                break;
            case IEnumerable list:
                text.Append('[');
                foreach (var item in list)
                    Write(text, item);
                text.Append(']');
                break;
            default:
                WriteFields(text, value);
                break;
        }

        text.Append(';');
    }

    private static void WriteFields(StringBuilder text, object value)
    {
        var type = value.GetType();
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Aside<>))
            return;
        text.Append(type.Name).Append('{');
        foreach (var field in Fields.GetOrAdd(type, FieldsOf))
        {
            text.Append(field.Name).Append('=');
            Write(text, field.GetValue(value));
        }

        text.Append('}');
    }

    /// <summary>Those of the type and of what it is derived from, by name: the order in which a machine lists them says
    /// nothing.</summary>
    private static FieldInfo[] FieldsOf(Type type)
    {
        var fields = new List<FieldInfo>();
        for (var own = type; own is not null && own != typeof(object) && own != typeof(ValueType); own = own.BaseType)
            fields.AddRange(FactFields.DeclaredBy(own));
        return
        [
            .. fields.OrderBy(f => f.Name, StringComparer.Ordinal).ThenBy(f => f.DeclaringType?.Name, StringComparer.Ordinal),
        ];
    }
}
