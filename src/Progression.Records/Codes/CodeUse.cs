namespace Progression.Records.Codes;

/// <summary>Which way a code of a public system is used.</summary>
public enum CodeUse
{
    /// <summary>Readings leave under it and come in under it.</summary>
    InAndOut,

    /// <summary>Readings leave under it; it says too little to be read.</summary>
    Out,

    /// <summary>Readings come in under it; ours say more or less than it does.</summary>
    In,
}
