using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Progression.Records.Json;

/// <summary>
/// One way to write a JSON value, so that equal content has equal bytes and equal hashes: UTF-8, no white space, names in
/// ordinal (UTF-16) order, and in strings only <c>"</c>, <c>\</c> and control characters escaped. Source: RFC 8785, sections
/// 3.2.1 to 3.2.3, except that numbers stay as they were written: 1.0 and 1 differ, and no digit is lost.
/// </summary>
public static class CanonicalJson
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = 64 };

    /// <summary>The canonical form.</summary>
    /// <exception cref="FormatException">Not JSON, a name twice in one object, half a surrogate pair, or nested deeper than 64.</exception>
    public static string Of(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            using JsonDocument document = JsonDocument.Parse(json, Strict);
            return Of(document.RootElement);
        }
        catch (Exception error) when (error is JsonException or ArgumentException or InvalidOperationException)
        {
            throw new FormatException("Not a JSON text that can be stored: " + error.Message, error);
        }
    }

    /// <summary>The canonical form and no problem, or a problem and no form.</summary>
    public static bool TryOf(string json, [NotNullWhen(true)] out string? canonical, [NotNullWhen(false)] out string? problem)
    {
        try
        {
            canonical = Of(json);
            problem = null;
            return true;
        }
        catch (FormatException error)
        {
            canonical = null;
            problem = error.Message;
            return false;
        }
    }

    /// <summary>The canonical form of an element that was read without duplicate names.</summary>
    public static string Of(JsonElement element)
    {
        StringBuilder text = new();
        Write(element, text);
        return text.ToString();
    }

    /// <summary>The canonical form of a string, quotes included.</summary>
    internal static string Quoted(string value)
    {
        StringBuilder text = new();
        WriteString(value, text);
        return text.ToString();
    }

    private static void Write(JsonElement element, StringBuilder text)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                WriteList('{', '}', element.EnumerateObject().OrderBy(member => member.Name, StringComparer.Ordinal), text, member =>
                {
                    WriteString(member.Name, text);
                    text.Append(':');
                    Write(member.Value, text);
                });
                break;
            case JsonValueKind.Array:
                WriteList('[', ']', element.EnumerateArray(), text, item => Write(item, text));
                break;
            case JsonValueKind.String:
                WriteString(element.GetString()!, text);
                break;
            default:
                text.Append(element.GetRawText());
                break;
        }
    }

    private static void WriteList<T>(char open, char close, IEnumerable<T> items, StringBuilder text, Action<T> write)
    {
        text.Append(open);
        bool first = true;
        foreach (T item in items)
        {
            if (!first)
            {
                text.Append(',');
            }

            first = false;
            write(item);
        }

        text.Append(close);
    }

    private static void WriteString(string value, StringBuilder text)
    {
        text.Append('"');
        foreach (char letter in value)
        {
            _ = letter switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\b' => text.Append("\\b"),
                '\t' => text.Append("\\t"),
                '\n' => text.Append("\\n"),
                '\f' => text.Append("\\f"),
                '\r' => text.Append("\\r"),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)letter:x4}"),
                _ => text.Append(letter),
            };
        }

        text.Append('"');
    }
}
