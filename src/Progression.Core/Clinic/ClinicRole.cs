namespace Progression.Core.Clinic;

/// <summary>What a person is in the clinic. One person may be several things at once.</summary>
/// <remarks>The name, in lower case, stands in the clinic's settings and in reviews: a name in use is never changed or given a new meaning.</remarks>
public enum ClinicRole
{
    /// <summary>Plans, measures and treats.</summary>
    Therapist,

    /// <summary>Reviews, returns and signs the plans of others.</summary>
    Supervisor,

    /// <summary>Answers for the clinic's records: settings, backup, restoring, audit.</summary>
    Lead,

    /// <summary>Looks after the machine, and sees no case: whoever is its superuser.</summary>
    Keeper,
}
