using System.Collections.Immutable;
using Progression.Core.Entry;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Progression.Records.Yaml;

/// <summary>
/// Builds the tree of one document from the parser's events and refuses what a plain file does not need: anchors and aliases (which can explode),
/// tags, merge keys, keys that are not plain text, duplicate keys, a second document, depth and size beyond any file of ours.
/// </summary>
internal sealed class YamlTree(IParser parser, FileProblems problems)
{
    /// <summary>How deep maps and lists may lie in each other, the map at the top counted.</summary>
    public const int MostDepth = 20;

    /// <summary>How many values, lists and maps a file may hold.</summary>
    public const int MostNodes = 20_000;

    private readonly HashSet<string> _told = [];
    private int _nodes;
    private bool _given;

    /// <summary>The map at the top, or null with a problem.</summary>
    /// <exception cref="YamlException">The text is not YAML.</exception>
    public YamlMap? Root()
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _))
        {
            return Refuse(null, "The file holds no fields.", "a map of fields", "");
        }

        parser.Consume<DocumentStart>();
        YamlNode root = Node("", 1);
        if (_given)
        {
            return null;
        }

        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out DocumentStart? second))
        {
            return Refuse((int)second.Start.Line, "A second document begins here.", "one document in a file", "---");
        }

        return root as YamlMap
            ?? Refuse(root.Line, "The file is not a map of fields.", "\"name: value\" lines at the top", (root as YamlScalar)?.Text ?? root.Kind);
    }

    private YamlNode Node(string path, int depth)
    {
        ParsingEvent next = parser.Consume<ParsingEvent>();
        int line = (int)next.Start.Line;
        if (++_nodes > MostNodes)
        {
            return GiveUp(line, path, $"The file holds too many values.", $"at most {MostNodes} values, lists and maps", "more");
        }

        if (depth > MostDepth && next is MappingStart or SequenceStart)
        {
            return GiveUp(line, path, "Maps and lists lie too deep in each other.", $"at most {MostDepth} levels", "more");
        }

        RefuseMarks(next, line, path);
        return next switch
        {
            Scalar scalar => Value(scalar, line, path),
            SequenceStart => List(line, path, depth),
            MappingStart => Map(line, path, depth),
            AnchorAlias => new YamlScalar(line, "", true),
            _ => throw new YamlException(next.Start, next.End, "A value is missing."),
        };
    }

    private YamlScalar Value(Scalar scalar, int line, string path)
    {
        // An escape in double quotes can write a character that was not in the file itself.
        if (YamlText.FirstHidden(scalar.Value) is { } hidden)
        {
            problems.Add(line, new Problem(path, "An escape writes a control or invisible character.", YamlText.VisibleOnly, YamlText.NameOf(hidden)));
        }

        return new YamlScalar(line, scalar.Value, scalar.Style == ScalarStyle.Plain);
    }

    private YamlList List(int line, string path, int depth)
    {
        ImmutableArray<YamlNode>.Builder items = ImmutableArray.CreateBuilder<YamlNode>();
        while (!_given && !parser.TryConsume<SequenceEnd>(out _))
        {
            items.Add(Node($"{path}[{items.Count + 1}]", depth + 1));
        }

        return new YamlList(line, items.ToImmutable());
    }

    private YamlMap Map(int line, string path, int depth)
    {
        ImmutableArray<YamlEntry>.Builder entries = ImmutableArray.CreateBuilder<YamlEntry>();
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        while (!_given && !parser.TryConsume<MappingEnd>(out _))
        {
            YamlNode key = Node(path, depth + 1);
            if (key is not YamlScalar name)
            {
                problems.Add(key.Line, new Problem(path, "A key is not a plain word.", "a field name before the colon", key.Kind));
                name = new YamlScalar(key.Line, "", true);
            }

            string field = path.Length == 0 ? name.Text : $"{path}.{name.Text}";
            RefuseKey(name, field, seen);
            if (!_given)
            {
                entries.Add(new YamlEntry(name, Node(field, depth + 1)));
            }
        }

        return new YamlMap(line, entries.ToImmutable());
    }

    private void RefuseKey(YamlScalar key, string field, Dictionary<string, int> seen)
    {
        if (key.Text == "<<")
        {
            Once(key.Line, field, "Merge keys are not used here.", "each field written out", "<<");
        }
        else if (!seen.TryAdd(key.Text, key.Line))
        {
            problems.Add(key.Line, new Problem(field, $"This field already stands on line {seen[key.Text]}.", "each field once", key.Text));
        }
    }

    private void RefuseMarks(ParsingEvent next, int line, string path)
    {
        if (next is AnchorAlias alias)
        {
            Once(line, path, "Anchors and aliases are not used here.", "each value written out", "*" + alias.Value.Value);
        }
        else if (next is NodeEvent node && !node.Anchor.IsEmpty)
        {
            Once(line, path, "Anchors and aliases are not used here.", "each value written out", "&" + node.Anchor.Value);
        }

        if (next is NodeEvent tagged && !tagged.Tag.IsEmpty)
        {
            Once(line, path, "Tags are not used here.", "the plain value", tagged.Tag.IsNonSpecific ? "!" : tagged.Tag.Value);
        }
    }

    private void Once(int line, string path, string wrong, string allowed, string found)
    {
        if (_told.Add(wrong))
        {
            problems.Add(line, new Problem(path, wrong, allowed, found));
        }
    }

    private YamlMap? Refuse(int? line, string wrong, string allowed, string found)
    {
        problems.Add(line, new Problem("", wrong, allowed, found));
        return null;
    }

    private YamlScalar GiveUp(int line, string path, string wrong, string allowed, string found)
    {
        _given = true;
        problems.Add(line, new Problem(path, wrong, allowed, found));
        return new YamlScalar(line, "", true);
    }
}
