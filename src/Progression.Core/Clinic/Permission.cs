using System.Collections.Immutable;

namespace Progression.Core.Clinic;

/// <summary>The one table of who may do what. Common practice, no source: a clinic's own rules come first.</summary>
/// <remarks>Nobody signs what they made or asked for; that depends on the plan and stands with the review.</remarks>
public static class Permission
{
    private static readonly ImmutableArray<(ClinicAct Act, string Words, ImmutableArray<ClinicRole> Roles)> Table =
    [
        (ClinicAct.ViewCase, "open cases", [ClinicRole.Therapist, ClinicRole.Supervisor, ClinicRole.Lead]),
        (ClinicAct.ChangeCase, "change a case or a plan", [ClinicRole.Therapist]),
        (ClinicAct.RequestReview, "ask for a review", [ClinicRole.Therapist]),
        (ClinicAct.Comment, "comment on a plan", [ClinicRole.Therapist, ClinicRole.Supervisor]),
        (ClinicAct.ReturnPlan, "return a plan", [ClinicRole.Supervisor]),
        (ClinicAct.SignPlan, "sign a plan", [ClinicRole.Supervisor]),
        (ClinicAct.PrintPlan, "print a plan", [ClinicRole.Therapist, ClinicRole.Supervisor]),
        (ClinicAct.ExportCase, "take a case out", [ClinicRole.Therapist, ClinicRole.Supervisor, ClinicRole.Lead]),
        (ClinicAct.ReadAudit, "search who did what", [ClinicRole.Supervisor, ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.CheckRecords, "check the records", [ClinicRole.Therapist, ClinicRole.Supervisor, ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.RebuildRecords, "make the index again", [ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.BackUpRecords, "back the records up", [ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.RestoreRecords, "restore the records", [ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.ExportRecords, "write the records out", [ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.ImportRecords, "take records in", [ClinicRole.Lead, ClinicRole.Keeper]),
        (ClinicAct.SeeFigures, "see the clinic's figures", [ClinicRole.Supervisor, ClinicRole.Lead]),
    ];

    /// <summary>Whether a role may do it.</summary>
    public static bool Of(ClinicRole role, ClinicAct act) => Row(act).Roles.Contains(role);

    /// <summary>What an act is called after "may": a verb and its object.</summary>
    public static string Words(ClinicAct act) => Row(act).Words;

    /// <summary>Why a person may not do it, as a sentence that says who may; null when they may.</summary>
    public static string? WhyNot(ClinicPerson person, ClinicAct act)
    {
        ArgumentNullException.ThrowIfNull(person);
        if (person.May(act))
        {
            return null;
        }

        string may = string.Join(" or ", Row(act).Roles.Select(role => role.ToString().ToLowerInvariant()));
        string are = person.Roles.IsEmpty ? "has no role in this clinic" : $"is {string.Join(" and ", person.Roles.Select(role => role.ToString().ToLowerInvariant()))}";
        return $"To {Words(act)} takes a {may}; the account {person.Name} {are}.";
    }

    private static (ClinicAct Act, string Words, ImmutableArray<ClinicRole> Roles) Row(ClinicAct act)
    {
        foreach ((ClinicAct Act, string Words, ImmutableArray<ClinicRole> Roles) row in Table)
        {
            if (row.Act == act)
            {
                return row;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(act), act, "No such act.");
    }
}
