namespace Progression.Records.Yaml;

/// <summary>Whether a field must be there.</summary>
internal enum Need
{
    /// <summary>A missing or blank field is a problem.</summary>
    Required,

    /// <summary>A missing or blank field reads as null.</summary>
    Optional,
}
