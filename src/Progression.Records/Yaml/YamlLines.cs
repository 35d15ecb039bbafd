using System.Text;
using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>Writes plain YAML, a line a field, which <see cref="YamlDocument"/> reads back. A field whose value is null is left out.</summary>
internal sealed class YamlLines
{
    private readonly StringBuilder _text = new();
    private string _indent = "";
    private bool _itemBegins;

    /// <summary>A value of ours: a word, a number, a quantity, a day. Never free text.</summary>
    public void Value(string key, string? value)
    {
        if (value is not null)
        {
            Line($"{key}: {value}");
        }
    }

    /// <summary>Free text, in quotes; what could not be read back (line ends, control characters) is made harmless.</summary>
    public void Text(string key, string? text)
    {
        if (text is not null)
        {
            string safe = SafeText.OneLine(text).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
            Line($"{key}: \"{safe}\"");
        }
    }

    /// <summary>A map.</summary>
    public void Map(string key, Action fields)
    {
        Line(key + ":");
        Deeper(fields);
    }

    /// <summary>A map of like fields; nothing when there are none.</summary>
    public void Map<T>(string key, IEnumerable<T> items, Action<T> field)
    {
        T[] all = [.. items];
        if (all.Length > 0)
        {
            Map(key, () => Array.ForEach(all, field));
        }
    }

    /// <summary>A list of maps; nothing when there are no items.</summary>
    public void List<T>(string key, IReadOnlyCollection<T> items, Action<T> fields)
    {
        if (items.Count == 0)
        {
            return;
        }

        Line(key + ":");
        foreach (T item in items)
        {
            Deeper(() =>
            {
                _itemBegins = true;
                Deeper(() => fields(item));
            });
        }
    }

    /// <summary>Everything written.</summary>
    public override string ToString() => _text.ToString();

    private void Deeper(Action write)
    {
        string before = _indent;
        _indent += "  ";
        write();
        _indent = before;
    }

    private void Line(string line)
    {
        _text.Append(_itemBegins ? _indent[..^2] + "- " : _indent).Append(line).Append('\n');
        _itemBegins = false;
    }
}
