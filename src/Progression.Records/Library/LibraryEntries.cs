using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Entry;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>
/// The entries of one part, a clinic's laid over the shipped ones: the same id replaces the whole entry in its place, a new id is added at the end,
/// and an entry that says only "remove: yes" takes the shipped one away. A replaced entry is not read at all.
/// </summary>
internal sealed partial class LibraryEntries
{
    private const string Remove = "remove";
    private const int LongestList = 12;

    private readonly List<LibraryEntry> _entries = [];
    private readonly Dictionary<string, int> _removed = new(StringComparer.Ordinal);
    private readonly HashSet<string> _missed = new(StringComparer.Ordinal);
    private readonly LibraryPart _part;
    private readonly ImmutableArray<(Fields Top, FileProblems Problems)> _layers;

    /// <summary>Lays the files of one part over each other.</summary>
    /// <param name="part">Which part.</param>
    /// <param name="files">The shipped file, then the clinic's; either may be missing or unreadable.</param>
    /// <param name="topFields">Fields at the top of the file beside the schema and the entries.</param>
    public LibraryEntries(LibraryPart part, IEnumerable<LibraryFile?> files, params ReadOnlySpan<string> topFields)
    {
        _part = part;
        ImmutableArray<(Fields, FileProblems)>.Builder layers = ImmutableArray.CreateBuilder<(Fields, FileProblems)>();
        foreach (LibraryFile file in files.OfType<LibraryFile>().Where(file => file.Document.Root is not null))
        {
            FileProblems problems = new(file.Name);
            Fields top = new(file.Document.Root!, "", problems);
            layers.Add((top, problems));
            Open(top, topFields);
            Lay(top, isClinic: layers.Count > 1);
        }

        _layers = layers.ToImmutable();
    }

    /// <summary>The entries in force, in order.</summary>
    public IReadOnlyList<LibraryEntry> All => _entries;

    /// <summary>Every id that was ever given, those a clinic has taken away too.</summary>
    public IEnumerable<string> Known => _entries.Select(entry => entry.Id).Concat(_removed.Keys);

    /// <summary>The top of the last file that has a field there; null when none has.</summary>
    public Fields? TopWith(string field) => _layers.Select(layer => layer.Top).LastOrDefault(top => top.Has(field));

    /// <summary>The problems found so far, the shipped file's first.</summary>
    public ImmutableArray<FileProblem> Problems => [.. _layers.SelectMany(layer => layer.Problems.InOrder())];

    /// <summary>Whether a clinic's file has taken an entry away.</summary>
    public bool Removes(string id) => _removed.ContainsKey(id);

    /// <summary>Asks for ids without which a library is not whole. Each is missed once, however often it is asked for.</summary>
    public void Require(IEnumerable<string> ids)
    {
        foreach (string id in ids.Where(id => _layers.Length > 0 && _entries.All(entry => entry.Id != id) && _missed.Add(id)))
        {
            bool removed = _removed.TryGetValue(id, out int line);
            _layers[^1].Problems.Add(removed ? line : null, new Problem(
                $"{_part.Key}.{id}", "This entry is needed by the program.", "every needed entry present, none removed", removed ? "remove: yes" : ""));
        }
    }

    /// <summary>Refuses ids that nothing in the program reads.</summary>
    public void AllowOnly(IReadOnlyCollection<string> ids)
    {
        string allowed = ids.Count > LongestList ? $"one of the {ids.Count} shipped ids of {_part.FileName}" : string.Join(", ", ids);
        foreach (LibraryEntry entry in _entries.Where(entry => !ids.Contains(entry.Id)))
        {
            string meant = NearestWord.To(entry.Id, ids) is string near ? $" Did you mean \"{near}\"?" : "";
            entry.Fields.Problems.Add(
                entry.Fields.Line, new Problem(entry.Fields.Path, "Nothing reads an entry of this name." + meant, allowed, entry.Id));
        }
    }

    /// <summary>Adds a problem of the part as a whole, to the last file that belongs to it.</summary>
    public void Refuse(Problem problem) => _layers.LastOrDefault().Problems?.Add(null, problem);

    private void Open(Fields top, ReadOnlySpan<string> topFields)
    {
        top.OneOf("schema", Need.Required, [_part.Schema]);
        foreach (string field in topFields)
        {
            top.Node(field, Need.Optional);
        }

        top.Node(_part.Key, Need.Required);
        top.Done();
    }

    private void Lay(Fields top, bool isClinic)
    {
        if (top.Map(_part.Key, Need.Optional) is not Fields entries)
        {
            return;
        }

        foreach (YamlScalar key in entries.Keys())
        {
            if (!Id().IsMatch(key.Text))
            {
                const string Allowed = "2 to 40 lower-case letters, digits, \"-\", \"_\" or \".\", a letter first";
                entries.Problems.Add(key.Line, new Problem(entries.Path, "This id is not allowed.", Allowed, key.Text));
            }
            else if (entries.Map(key.Text, Need.Required) is Fields fields)
            {
                Lay(new LibraryEntry(key.Text, fields, isClinic));
            }
        }
    }

    private void Lay(LibraryEntry entry)
    {
        int place = _entries.FindIndex(each => each.Id == entry.Id);
        if (entry.IsClinic && entry.Fields.Has(Remove))
        {
            TakeAway(entry, place);
        }
        else if (place < 0)
        {
            _entries.Add(entry);
        }
        else
        {
            _entries[place] = entry;
        }
    }

    private void TakeAway(LibraryEntry entry, int place)
    {
        entry.Fields.OneOf(Remove, Need.Required, ["yes"]);
        entry.Fields.Done();
        if (place < 0)
        {
            string meant = NearestWord.To(entry.Id, _entries.Select(each => each.Id)) is string near ? $" Did you mean \"{near}\"?" : "";
            entry.Fields.Refuse(Remove, "There is no shipped entry of this name to remove." + meant, "the id of a shipped entry", entry.Id);
            return;
        }

        _entries.RemoveAt(place);
        _removed.Add(entry.Id, entry.Fields.Line);
    }

    [GeneratedRegex(@"^[a-z][a-z0-9._-]{1,39}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Id();
}
