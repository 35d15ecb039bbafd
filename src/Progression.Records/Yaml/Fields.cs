using System.Collections.Immutable;
using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>
/// Reads the fields of one map. Each reading gives a value or null, and where the file is wrong one problem with its line; nothing is thrown.
/// <see cref="Done"/> comes last: it refuses every key that was not asked for.
/// </summary>
/// <param name="map">The map.</param>
/// <param name="path">Where it stands in the file; empty for the top.</param>
/// <param name="problems">Where problems go.</param>
internal sealed partial class Fields(YamlMap map, string path, FileProblems problems)
{
    private readonly Dictionary<string, YamlEntry> _entries = map.Entries.ToDictionary(entry => entry.Key.Text, StringComparer.Ordinal);
    private readonly List<string> _asked = [];
    private bool _anyKey;

    /// <summary>The line on which the map begins.</summary>
    public int Line => map.Line;

    /// <summary>Where the map stands in the file; empty for the top.</summary>
    public string Path => path;

    /// <summary>The problems of the whole file so far.</summary>
    public FileProblems Problems => problems;

    /// <summary>Whether something stands under the key; a blank value is nothing.</summary>
    public bool Has(string key) => Entry(key) is { Value: not YamlScalar { IsBlank: true } };

    /// <summary>What stands under a key; null when nothing does, with a problem when it is required.</summary>
    public YamlNode? Node(string key, Need need)
    {
        if (!_anyKey && !_asked.Contains(key))
        {
            _asked.Add(key);
        }

        if (Has(key))
        {
            return Entry(key)!.Value;
        }

        if (need == Need.Required)
        {
            problems.Add(Entry(key)?.Key.Line ?? map.Line, new Problem(PathOf(key), "This field is missing.", "a value; the field is required", ""));
        }

        return null;
    }

    /// <summary>A single value; lists and maps are refused.</summary>
    public YamlScalar? Scalar(string key, Need need) => Node(key, need) switch
    {
        null => null,
        YamlScalar scalar => scalar,
        YamlNode other => Refused<YamlScalar>(key, "A single value is asked for here.", "one value after the colon", other.Kind),
    };

    /// <summary>The fields of a map.</summary>
    public Fields? Map(string key, Need need) => Node(key, need) is YamlNode node ? Of(node, PathOf(key), problems) : null;

    /// <summary>The items of a list, each with its place, counted from 1. A missing optional list is empty.</summary>
    public ImmutableArray<ListItem> Items(string key, Need need)
    {
        switch (Node(key, need))
        {
            case null:
                return [];
            case YamlList list:
                return [.. list.Items.Select((item, index) => new ListItem(item, $"{PathOf(key)}[{index + 1}]"))];
            case YamlNode other:
                Refuse(key, "A list is asked for here.", "items that begin with \"- \"", (other as YamlScalar)?.Text ?? other.Kind);
                return [];
        }
    }

    /// <summary>The items of a list of maps. An item that is not a map is a problem and left out.</summary>
    public ImmutableArray<Fields> Maps(string key, Need need) =>
        [.. Items(key, need).Select(item => Of(item.Node, item.Path, problems)).OfType<Fields>()];

    /// <summary>Every key of the map in the order of the file, for a map whose keys are not known beforehand. All of them count as asked for.</summary>
    public ImmutableArray<YamlScalar> Keys()
    {
        _anyKey = true;
        return [.. map.Entries.Select(entry => entry.Key)];
    }

    /// <summary>Refuses what stands under a key, for a reason of the caller's.</summary>
    public void Refuse(string key, string wrong, string allowed, string found) =>
        problems.Add(Entry(key)?.Value.Line ?? map.Line, new Problem(PathOf(key), wrong, allowed, found));

    /// <summary>Refuses the key itself because it is no id of the library; the nearest id is offered.</summary>
    /// <param name="key">The id as it stands in the file.</param>
    /// <param name="what">What the ids name, for instance "measure".</param>
    /// <param name="known">The ids there are.</param>
    public void RefuseId(string key, string what, IEnumerable<string> known) => problems.Add(
        Entry(key)?.Key.Line, new Problem(PathOf(key), $"There is no such {what}." + Meant(key, known), $"the id of a {what} of the library", key));

    /// <summary>Refuses every key that was not asked for, with the nearest one that was.</summary>
    /// <param name="alsoMeant">Keys that are allowed here too, but too many to list; the nearest one may be of them.</param>
    public void Done(IEnumerable<string>? alsoMeant = null)
    {
        foreach (YamlScalar key in map.Entries.Select(entry => entry.Key).Where(key => !_anyKey && !_asked.Contains(key.Text)))
        {
            string wrong = "There is no such field here." + Meant(key.Text, _asked.Union(alsoMeant ?? []));
            problems.Add(key.Line, new Problem(PathOf(key.Text), wrong, string.Join(", ", _asked), key.Text));
        }
    }

    /// <summary>The fields of a node that should be a map; null with a problem when it is not.</summary>
    public static Fields? Of(YamlNode node, string path, FileProblems problems)
    {
        if (node is YamlMap map)
        {
            return new Fields(map, path, problems);
        }

        problems.Add(node.Line, new Problem(path, "A map of fields is asked for here.", "\"name: value\" lines", (node as YamlScalar)?.Text ?? node.Kind));
        return null;
    }

    private string Meant(string typed, IEnumerable<string> known) =>
        !problems.IsFull && NearestWord.To(typed, known) is string near ? $" Did you mean \"{near}\"?" : "";

    private YamlEntry? Entry(string key) => _entries.GetValueOrDefault(key);

    private string PathOf(string key) => path.Length == 0 ? key : $"{path}.{key}";

    private T? Refused<T>(string key, string wrong, string allowed, string found)
        where T : class
    {
        Refuse(key, wrong, allowed, found);
        return null;
    }
}
