using System.Collections.Immutable;

namespace Progression.Records.Yaml;

/// <summary>A part of a YAML document that knows the line it begins on, counted from 1.</summary>
internal abstract record YamlNode(int Line)
{
    /// <summary>What it is, in words for a message.</summary>
    public abstract string Kind { get; }
}

/// <summary>A single value. All values are text until a field reader gives them a type, so "no", "1e3" and "007" stay as they were written.</summary>
internal sealed record YamlScalar(int Line, string Text, bool IsPlain) : YamlNode(Line)
{
    public override string Kind => IsBlank ? "nothing" : "a single value";

    /// <summary>Nothing was written: an empty plain value, "~" or "null". An empty text in quotes is not blank.</summary>
    public bool IsBlank => IsPlain && Text is "" or "~" or "null";
}

/// <summary>A list.</summary>
internal sealed record YamlList(int Line, ImmutableArray<YamlNode> Items) : YamlNode(Line)
{
    public override string Kind => "a list";
}

/// <summary>A map with its keys in the order of the file, each once.</summary>
internal sealed record YamlMap(int Line, ImmutableArray<YamlEntry> Entries) : YamlNode(Line)
{
    public override string Kind => "a map of fields";
}

/// <summary>A key with its value.</summary>
internal sealed record YamlEntry(YamlScalar Key, YamlNode Value);
