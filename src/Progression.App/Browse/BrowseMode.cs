namespace Progression.App.Browse;

/// <summary>What the keys mean in the library.</summary>
public enum BrowseMode
{
    /// <summary>Walking through the entries.</summary>
    List,

    /// <summary>Typing what is looked for; the list follows.</summary>
    Find,

    /// <summary>Reading an entry.</summary>
    Entry,

    /// <summary>Reading the help.</summary>
    Help,
}
