using System.Collections.Immutable;
using Progression.Core.Clinic;

namespace Progression.Records.Clinic;

/// <summary>What a clinic has set for the folder its records are in.</summary>
public sealed record ClinicSettings
{
    /// <summary>What the clinic calls itself; empty where it did not say.</summary>
    public string Name { get; init; } = "";

    /// <summary>Under whose account the program runs.</summary>
    public required ClinicAccounts Accounts { get; init; }

    /// <summary>The group that shares the folder; null where the program runs as the records' account.</summary>
    public string? Group { get; init; }

    /// <summary>The groups of the system whose members have a role.</summary>
    public required ImmutableArray<(ClinicRole Role, string Group)> Roles { get; init; }

    /// <summary>The line above everything that is printed; null where there is none.</summary>
    public string? PrintHeader { get; init; }

    /// <summary>Whom a patient is told to call; null where that is not set.</summary>
    public string? PrintContact { get; init; }

    /// <summary>The folder papers are put in; null for one beside the records.</summary>
    public string? PapersFolder { get; init; }

    /// <summary>Whether the head of the records' chain goes to the system's log after each save.</summary>
    public bool Syslog { get; init; }
}

/// <summary>Under whose account the program runs.</summary>
public enum ClinicAccounts
{
    /// <summary>Under the person's own, which shares the folder with others through a group.</summary>
    Own,

    /// <summary>Under the account that owns the folder; sudo vouches for the person.</summary>
    Sudo,
}
