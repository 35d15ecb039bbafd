namespace Progression.App.Caseload;

/// <summary>The order of a list of cases; the code settles ties.</summary>
public enum CaseOrder
{
    /// <summary>By code.</summary>
    Code,

    /// <summary>What is due first comes first, then cases without anything due.</summary>
    Due,

    /// <summary>By post-op week, the latest operation first.</summary>
    Week,

    /// <summary>Saved last comes first.</summary>
    Saved,

    /// <summary>Most readings behind first.</summary>
    Behind,
}
