using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Codes;

/// <summary>Reads the table of public codes. A file is read whole or not at all.</summary>
public static class StandardCodesReader
{
    private const string Place = "codes/standard-codes.yaml";
    private const string Schema = "standard-codes/1";
    private const string BothSides = "both";
    private const int MostText = 400;
    private const int MostCode = 40;

    /// <summary>The codes that come with the program.</summary>
    /// <exception cref="InvalidOperationException">The shipped file is wrong, which a test rules out.</exception>
    public static StandardCodes Shipped()
    {
        using Stream shipped = typeof(StandardCodesReader).Assembly.GetManifestResourceStream(Place)!;
        using MemoryStream bytes = new();
        shipped.CopyTo(bytes);
        (StandardCodes? codes, ImmutableArray<FileProblem> problems) = Read(Place, bytes.ToArray());
        return codes ?? throw new InvalidOperationException("The shipped codes are wrong: " + problems[0]);
    }

    /// <summary>The codes of a file, or everything that is wrong with it.</summary>
    /// <param name="name">What to call it in a message.</param>
    /// <param name="bytes">UTF-8 text.</param>
    public static (StandardCodes? Codes, ImmutableArray<FileProblem> Problems) Read(string name, byte[] bytes)
    {
        YamlDocument document = YamlDocument.Read(name, bytes);
        if (document.Root is null)
        {
            return (null, document.Problems);
        }

        FileProblems problems = new(name);
        Fields file = new(document.Root, "", problems);
        file.OneOf("schema", Need.Required, [Schema]);
        ImmutableSortedDictionary<string, (string Uri, string? Notice)> systems = Systems(file);
        ImmutableArray<StandardCode> codes = [.. file.Maps("codes", Need.Required).Select(fields => Code(fields, systems)).OfType<StandardCode>()];
        file.Done();
        StandardCodes read = new(codes, systems.Values.Where(system => system.Notice is not null).ToImmutableSortedDictionary(system => system.Uri, system => system.Notice!, StringComparer.Ordinal));
        return problems.Count == 0 ? (read, []) : (null, problems.InOrder());
    }

    private static ImmutableSortedDictionary<string, (string Uri, string? Notice)> Systems(Fields file)
    {
        var systems = ImmutableSortedDictionary.CreateBuilder<string, (string Uri, string? Notice)>(StringComparer.Ordinal);
        if (file.Map("systems", Need.Required) is not { } named)
        {
            return systems.ToImmutable();
        }

        foreach (string name in named.Keys().Select(key => key.Text))
        {
            if (named.Map(name, Need.Required) is { } fields)
            {
                systems[name] = (fields.Text("uri", Need.Required) ?? "", fields.Text("notice", Need.Optional, MostText));
                fields.Done();
            }
        }

        return systems.ToImmutable();
    }

    private static StandardCode? Code(Fields fields, ImmutableSortedDictionary<string, (string Uri, string? Notice)> systems)
    {
        string? system = fields.OneOf("system", Need.Required, systems.Keys);
        string? code = fields.Text("code", Need.Required, MostCode);
        string? meaning = fields.Text("meaning", Need.Required);
        ImmutableArray<string> measures = [.. fields.Values("measures", (_, text) => Entered<string>.Good(text))];
        if (measures.IsEmpty)
        {
            fields.Refuse("measures", "A code stands for a measure.", "ids of measures", "");
        }

        string? side = fields.OneOf("side", Need.Required, [.. EnumWords.All<Side>(), BothSides]);
        CodeUse? use = fields.OneOf<CodeUse>("use", Need.Required);
        string? note = fields.Text("note", Need.Optional, MostText);
        Source source = fields.Source();
        fields.Done();
        return system is null || code is null || meaning is null || side is null || use is null
            ? null
            : new StandardCode(systems[system].Uri, code, meaning, measures, EnumWords.Read<Side>(side), use.Value, note, source);
    }
}
