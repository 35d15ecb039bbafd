namespace Progression.Records.Storage;

/// <summary>The one chain of the store that is of no case.</summary>
public static class AuditChain
{
    /// <summary>What stands for a case in it. No case has such a code, and lists leave it out.</summary>
    public const string Code = "*";
}
