namespace Progression.App.Imports;

/// <summary>What the keys mean on the screen of an import.</summary>
public enum ImportMode
{
    /// <summary>Typing the name of the file and saying what it holds.</summary>
    File,

    /// <summary>Reading what it comes to, before anything comes in.</summary>
    Preview,

    /// <summary>Reading the help.</summary>
    Help,
}
