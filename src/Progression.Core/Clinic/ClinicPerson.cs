using System.Collections.Immutable;

namespace Progression.Core.Clinic;

/// <summary>Who works, as the operating system vouches for it; never a name that was typed.</summary>
/// <param name="UserId">The account's number. What was done under the same number was done by the same person.</param>
/// <param name="Name">The account's name, to be shown; it decides nothing.</param>
/// <param name="Roles">What the person is in the clinic; empty for somebody who is nothing there, and may do nothing.</param>
public sealed record ClinicPerson(string UserId, string Name, ImmutableArray<ClinicRole> Roles)
{
    /// <summary>Somebody who works on records of their own, with nobody to review them: therapist and lead.</summary>
    public static ClinicPerson Alone(string userId, string name) => new(userId, name, [ClinicRole.Therapist, ClinicRole.Lead]);

    /// <summary>Whether the person has a role.</summary>
    public bool Is(ClinicRole role) => Roles.Contains(role);

    /// <summary>Whether the person may do it.</summary>
    public bool May(ClinicAct act) => Roles.Any(role => Permission.Of(role, act));

    /// <inheritdoc/>
    public bool Equals(ClinicPerson? other) => other is not null && UserId == other.UserId && Name == other.Name && Roles.SequenceEqual(other.Roles);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(UserId, Name, Roles.Length);
}
