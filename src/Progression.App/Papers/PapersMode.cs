namespace Progression.App.Papers;

/// <summary>What the keys mean on the screen of papers.</summary>
public enum PapersMode
{
    /// <summary>Choosing one, its format, its week.</summary>
    List,

    /// <summary>Typing the name of its file.</summary>
    Name,

    /// <summary>Reading it.</summary>
    Reading,

    /// <summary>Reading the help.</summary>
    Help,
}
