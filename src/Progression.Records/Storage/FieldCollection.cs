using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace Progression.Records.Storage;

/// <summary>A few named texts. Lists hold thousands of these, so names and texts lie in one array and are looked up by going through it.</summary>
public sealed class FieldCollection : IReadOnlyDictionary<string, string>
{
    private readonly string[] _pairs;

    private FieldCollection(string[] pairs) => _pairs = pairs;

    /// <inheritdoc/>
    public int Count => _pairs.Length / 2;

    /// <inheritdoc/>
    public IEnumerable<string> Keys => this.Select(pair => pair.Key);

    /// <inheritdoc/>
    public IEnumerable<string> Values => this.Select(pair => pair.Value);

    /// <inheritdoc/>
    public string this[string key] => TryGetValue(key, out string? value) ? value : throw new KeyNotFoundException($"There is no field {key}.");

    /// <summary>The texts, by name in ordinal order.</summary>
    public static FieldCollection Of(IEnumerable<KeyValuePair<string, string>> fields) =>
        new([.. fields.OrderBy(field => field.Key, StringComparer.Ordinal).SelectMany(field => new[] { field.Key, field.Value })]);

    /// <inheritdoc/>
    public bool ContainsKey(string key) => TryGetValue(key, out _);

    /// <inheritdoc/>
    public bool TryGetValue(string key, [MaybeNullWhen(false)] out string value)
    {
        for (int at = 0; at < _pairs.Length; at += 2)
        {
            if (_pairs[at] == key)
            {
                value = _pairs[at + 1];
                return true;
            }
        }

        value = null;
        return false;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, string>> GetEnumerator() =>
        _pairs.Chunk(2).Select(pair => KeyValuePair.Create(pair[0], pair[1])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Texts that are in order already: a name, its text, the next name.</summary>
    internal static FieldCollection OfPairs(string[] pairs) => new(pairs);
}
