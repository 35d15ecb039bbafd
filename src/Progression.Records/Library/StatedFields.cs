using System.Text.RegularExpressions;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>
/// Reads the fields of a publication: a value, a value followed by its standing in brackets, or "open". A field left out is open too.
/// A value without a standing of its own has that of the entry.
/// </summary>
internal sealed partial class StatedFields(Fields fields, Standing usual)
{
    /// <summary>A quantity or another value that is read from text.</summary>
    public Stated<T> As<T>(string key, Func<string, string, Entered<T>> read)
        where T : class => Value(key, read, value => value);

    /// <summary>A whole number, both ends included.</summary>
    public Stated<int> Whole(string key, int least, int most) =>
        Value(key, (field, text) => WholeNumberText.Read(field, text, least, most), number => number.Count);

    /// <summary>One of the values of an enum.</summary>
    public Stated<T> OneOf<T>(string key)
        where T : struct, Enum =>
        Value(key, (field, text) => WordText.Read(field, text, [.. Enum.GetValues<T>().Select(value => (EnumWords.Of(value), value))]), choice => choice.Value);

    /// <summary>yes or no.</summary>
    public Stated<bool> YesNo(string key) =>
        Value(key, (field, text) => WordText.Read(field, text, ("yes", true), ("no", false)), choice => choice.Value);

    /// <summary>One line of text.</summary>
    public Stated<string> Text(string key) => Value(key, Line, text => text);

    private Stated<T> Value<T, TRead>(string key, Func<string, string, Entered<TRead>> read, Func<TRead, T> value)
        where T : notnull
        where TRead : class
    {
        Standing standing = usual;
        bool open = fields.Scalar(key, Need.Optional)?.Text.Trim() is null or "open";
        TRead? given = open ? null : fields.As(key, Need.Optional, (field, text) =>
        {
            Match marked = Marked().Match(text);
            standing = marked.Success ? EnumWords.Read<Standing>(marked.Groups[2].Value)!.Value : usual;
            return read(field, marked.Success ? marked.Groups[1].Value : text);
        });
        return given is null ? Stated<T>.Open : Stated<T>.As(value(given), standing);
    }

    private static Entered<string> Line(string field, string text) => text.Length is > 0 and <= Fields.UsualText && !text.Contains('\n', StringComparison.Ordinal)
        ? Entered<string>.Good(text)
        : Entered<string>.Bad(new Problem(field, "The text does not fit.", $"one line of 1 to {Fields.UsualText} characters", text));

    [GeneratedRegex(@"^(.*\S) *\((seen|derived|from memory|common practice)\)\z", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Marked();
}
