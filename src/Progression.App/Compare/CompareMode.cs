namespace Progression.App.Compare;

/// <summary>What the keys of the comparison mean at the moment.</summary>
public enum CompareMode
{
    /// <summary>Going through the measures.</summary>
    Table,

    /// <summary>Reading what a change rests on.</summary>
    Why,

    /// <summary>Reading the help page.</summary>
    Help,
}
