using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;

namespace Progression.Records.Yaml;

internal sealed partial class Fields
{
    /// <summary>The longest one-line text a field takes unless it says otherwise, in characters.</summary>
    public const int UsualText = 120;

    /// <summary>One line of text, spaces at the ends dropped.</summary>
    /// <param name="key">The field.</param>
    /// <param name="need">Whether it must be there.</param>
    /// <param name="most">Most characters.</param>
    public string? Text(string key, Need need, int most = UsualText)
    {
        if (Scalar(key, need)?.Text.Trim() is not string text)
        {
            return null;
        }

        return text.Length == 0 || text.Length > most || text.Contains('\n', StringComparison.Ordinal)
            ? Refused<string>(key, "The text does not fit.", $"one line of 1 to {most} characters", text)
            : text;
    }

    /// <summary>A day.</summary>
    public DateOnly? Date(string key, Need need)
    {
        if (Scalar(key, need) is not { } scalar)
        {
            return null;
        }

        if (DateOnly.TryParseExact(scalar.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        Refuse(key, "This is not a day of the calendar.", "year-month-day, for instance 2026-03-09", scalar.Text);
        return null;
    }

    /// <summary>A day of a span.</summary>
    public DateOnly? Date(string key, Need need, DaySpan span)
    {
        DateOnly? read = Date(key, need);
        if (read is not DateOnly day || (day >= span.First && day <= span.Last))
        {
            return read;
        }

        Refuse(key, day < span.First ? span.Early : span.Late, span.Words, DaySpan.Text(day));
        return null;
    }

    /// <summary>A whole number.</summary>
    public int? Whole(string key, Need need, NumberRange range) => (int?)Numeric(key, need, range, whole: true);

    /// <summary>A number, decimal point allowed.</summary>
    public double? Decimal(string key, Need need, NumberRange range) => Numeric(key, need, range, whole: false);

    /// <summary>yes or no.</summary>
    public bool? YesNo(string key, Need need) => OneOf(key, need, ["yes", "no"]) switch
    {
        "yes" => true,
        "no" => false,
        _ => null,
    };

    /// <summary>One of the values of an enum, written as <see cref="EnumWords"/> does.</summary>
    public T? OneOf<T>(string key, Need need)
        where T : struct, Enum => OneOf(key, need, EnumWords.All<T>()) is string words ? EnumWords.Read<T>(words) : null;

    /// <summary>One of the given words; the nearest is offered for any other.</summary>
    public string? OneOf(string key, Need need, IEnumerable<string> words)
    {
        if (Scalar(key, need) is not { } scalar)
        {
            return null;
        }

        ImmutableArray<string> known = [.. words];
        string text = scalar.Text.Trim();
        return known.Contains(text) ? text : Refused<string>(key, "This is none of the known words." + Meant(text, known), string.Join(", ", known), text);
    }

    /// <summary>A value with its own way of being written, a quantity with unit for instance.</summary>
    /// <param name="key">The field.</param>
    /// <param name="need">Whether it must be there.</param>
    /// <param name="read">Reads the text; is given the path of the field and the text. Only its first problem is told.</param>
    public T? As<T>(string key, Need need, Func<string, string, Entered<T>> read)
        where T : class
    {
        if (Scalar(key, need) is not { } scalar)
        {
            return null;
        }

        Entered<T> entered = read(PathOf(key), scalar.Text.Trim());
        if (entered.Value is null)
        {
            problems.Add(scalar.Line, entered.Problems[0]);
        }

        return entered.Value;
    }

    /// <summary>The single values of a list, each with its own way of being written; an item that is wrong is a problem and left out.</summary>
    /// <param name="key">The field.</param>
    /// <param name="read">As for a single value.</param>
    public ImmutableArray<T> Values<T>(string key, Func<string, string, Entered<T>> read)
        where T : class
    {
        ImmutableArray<T>.Builder values = ImmutableArray.CreateBuilder<T>();
        foreach (ListItem item in Items(key, Need.Optional))
        {
            Entered<T> entered = item.Node is YamlScalar scalar
                ? read(item.Path, scalar.Text.Trim())
                : Entered<T>.Bad(new Problem(item.Path, "A single value is asked for here.", "one value", item.Node.Kind));
            if (entered.Value is { } value)
            {
                values.Add(value);
            }
            else
            {
                problems.Add(item.Node.Line, entered.Problems[0]);
            }
        }

        return values.ToImmutable();
    }

    private double? Numeric(string key, Need need, NumberRange range, bool whole)
    {
        if (Scalar(key, need) is not { } scalar)
        {
            return null;
        }

        string text = scalar.Text.Trim();
        double? number = NumberRange.Read(text);
        if (number is double value && range.Takes(value) && (!whole || value == Math.Floor(value)))
        {
            return value;
        }

        Refuse(key, Mistake(text, number, range), range.Words(whole), text);
        return null;
    }

    private static string Mistake(string text, double? number, NumberRange range) =>
        NumberRange.HasComma(text) ? "The decimal sign is a point, not a comma."
        : number is null ? "This is not a number as it is written here."
        : range.Takes((double)number) ? "This is not a whole number."
        : "The number is out of range.";
}
