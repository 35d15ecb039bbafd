namespace Progression.Exchange.Fhir;

/// <summary>The names of our own systems: what has no public code leaves under them, with words beside it. They name, and lead nowhere.</summary>
public static class FhirSystems
{
    /// <summary>Codes of cases.</summary>
    public const string Case = "urn:x-progression:case";

    /// <summary>Revisions of plans: CODE/7.</summary>
    public const string Plan = "urn:x-progression:plan";

    /// <summary>The hashes of revisions, SHA-256.</summary>
    public const string Hash = "urn:x-progression:plan-sha256";

    /// <summary>Accounts of those who plan and review.</summary>
    public const string Account = "urn:x-progression:account";

    /// <summary>Ids of measures.</summary>
    public const string Measure = "urn:x-progression:measure";

    /// <summary>Ids of the yes/no questions of a visit.</summary>
    public const string Sign = "urn:x-progression:sign";

    /// <summary>What else stands with a reading: a trial, the position, the steps of a staircase.</summary>
    public const string Detail = "urn:x-progression:reading-detail";

    /// <summary>Ids of exercises.</summary>
    public const string Exercise = "urn:x-progression:exercise";

    /// <summary>Rungs of the stim ladder.</summary>
    public const string Rung = "urn:x-progression:stim-rung";

    /// <summary>Kinds of tasks.</summary>
    public const string Task = "urn:x-progression:task";

    /// <summary>Milestones.</summary>
    public const string Milestone = "urn:x-progression:milestone";

    /// <summary>A single trial of a reading.</summary>
    public const string Trial = "trial";

    /// <summary>How many trials a value is the mean of, where only the mean is known.</summary>
    public const string Trials = "trials";

    /// <summary>The position of the person.</summary>
    public const string Position = "position";

    /// <summary>The steps of a staircase.</summary>
    public const string Steps = "steps";
}
