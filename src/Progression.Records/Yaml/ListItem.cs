namespace Progression.Records.Yaml;

/// <summary>An item of a list with its place in the file, for instance "assessments[2]".</summary>
internal sealed record ListItem(YamlNode Node, string Path);
