namespace Progression.Records.Storage;

/// <summary>Why the store could not answer.</summary>
public enum StoreFault
{
    /// <summary>In use until the deadline passed.</summary>
    Busy,

    /// <summary>Too little room on the disk.</summary>
    NoSpace,

    /// <summary>The journal, or the part asked for, is damaged or missing.</summary>
    Corrupt,

    /// <summary>A newer version of the program saved it.</summary>
    Newer,

    /// <summary>The folder or its files may not be used.</summary>
    Refused,
}
